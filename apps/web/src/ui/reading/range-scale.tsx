import { type Decimal, parseReading, type ReadingRange, type Verdict } from '../../format/reading.js';

interface RangeScaleProps {
  readonly range: ReadingRange;
  readonly unit: string;
  readonly value: Decimal | null;
  readonly verdict: Verdict | null;
}

const WIDTH = 420;
const LEFT = 110;
const RIGHT = 310;

// Only for drawing: judgement is made on the exact decimals.
const approximate = (value: Decimal): number => Number(value.scaled) / 10 ** value.scale;

/** The range as a box on a line with the reading as a pointer. The words beside it say the same. */
export function RangeScale({ range, value, verdict }: RangeScaleProps) {
  const low = parseReading(range.low);
  const high = parseReading(range.high);
  if (!low.ok || !high.ok) return null;
  const from = approximate(low.value);
  const span = approximate(high.value) - from;
  const at =
    value === null || span <= 0 ? null : LEFT + ((approximate(value) - from) / span) * (RIGHT - LEFT);
  const x = at === null ? null : Math.min(WIDTH - 12, Math.max(12, at));
  const outside = verdict !== null && verdict.kind !== 'inside';
  return (
    <svg className="range-scale" viewBox={`0 0 ${WIDTH} 66`} aria-hidden="true">
      <path className="range-line" d={`M0 30H${WIDTH}`} />
      <rect className="range-box" x={LEFT} y="20" width={RIGHT - LEFT} height="20" />
      <text x={LEFT} y="60" textAnchor="middle">
        {range.low}
      </text>
      <text x={RIGHT} y="60" textAnchor="middle">
        {range.high}
      </text>
      {x !== null && (
        <g
          className={outside ? 'range-pointer range-pointer-out' : 'range-pointer'}
          transform={`translate(${x} 0)`}
        >
          <path d="M0 12V42" />
          <path className="range-head" d="M0 4l9 13H-9z" />
        </g>
      )}
    </svg>
  );
}
