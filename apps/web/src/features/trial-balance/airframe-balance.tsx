import { StatusMark } from '../../ui/status/status-mark.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { amountOf, differenceText, isNothing, KINDS, spanText } from './balance-words.js';
import { SpanLinks, SpanTable, WhoWasThere } from './span-table.js';
import type { AirframeBalance, PositionBalance } from './trial-balance-queries.js';

interface KindRow {
  readonly kind: (typeof KINDS)[number]['kind'];
  readonly word: string;
  readonly position: PositionBalance;
}

const account = (
  id: 'flown' | 'runs' | 'onEngines' | 'empty' | 'notRunning' | 'difference',
  header: string,
): Column<KindRow> => ({
  id,
  header,
  align: 'figures',
  cell: ({ kind, position }) => {
    const text = amountOf(kind, position[id]);
    return id === 'difference' && position[id][kind] !== 0 ? <strong>{text}</strong> : text;
  },
});

const COLUMNS: readonly Column<KindRow>[] = [
  { id: 'kind', header: 'Counted', namesRow: true, cell: ({ word }) => word },
  account('flown', 'Flown'),
  account('runs', 'Run on ground'),
  account('onEngines', 'On engines'),
  account('empty', 'Position empty'),
  account('notRunning', 'Not running'),
  account('difference', 'Difference'),
];

/** The spans that do not add up, before anything else. */
function WhereItDoesNot({ balance }: { readonly balance: AirframeBalance }) {
  const wrong = balance.positions.flatMap(({ positionNumber, spans }) =>
    spans
      .filter(({ difference }) => !isNothing(difference))
      .map((span) => ({ key: `${positionNumber} ${span.from} ${span.componentId}`, positionNumber, span })),
  );
  if (wrong.length === 0) return null;
  return (
    <section className="stack" aria-labelledby="wrong">
      <h2 id="wrong" className="section-heading">
        Where it does not add up
      </h2>
      <ul className="plain-list balance-wrong">
        {wrong.map(({ key, positionNumber, span }) => (
          <li key={key}>
            <StatusMark
              status="over-limit"
              word={`Position ${positionNumber}: ${differenceText(span.difference)}`}
            />
            <p>
              <WhoWasThere span={span} />, {spanText(span)}. Flown {amountOf('minutes', span.flown)} h, run on
              the ground {amountOf('minutes', span.runs)} h, taken or passed {amountOf('minutes', span.taken)}{' '}
              h, not running {amountOf('minutes', span.notRunning)} h.
            </p>
            <p>
              <SpanLinks airframeId={balance.airframeId} span={span} />
            </p>
          </li>
        ))}
      </ul>
      <p className="quiet">
        A difference above zero was flown and went nowhere; one below zero was made up. Neither can come from
        entering flights or changes: tell whoever looks after the server.
      </p>
    </section>
  );
}

function Position({
  balance,
  position,
}: {
  readonly balance: AirframeBalance;
  readonly position: PositionBalance;
}) {
  const { positionNumber, spans } = position;
  const id = `position-${positionNumber}`;
  return (
    <section className="stack" aria-labelledby={id}>
      <h2 id={id} className="section-heading">
        Position {positionNumber}
      </h2>
      <DataTable
        caption={`Position ${positionNumber} by what is counted`}
        captionHidden
        columns={COLUMNS}
        rows={KINDS.map(({ kind, word }) => ({ kind, word, position }))}
        rowKey={({ kind }) => kind}
      />
      <h3>Engine by engine</h3>
      <SpanTable balance={balance} positionNumber={positionNumber} spans={spans} />
    </section>
  );
}

/** The balance of one airframe: the spans that do not add up, then each position in full. */
export function AirframeBalanceView({ balance }: { readonly balance: AirframeBalance }) {
  return (
    <div className="stack print-landscape">
      <WhereItDoesNot balance={balance} />
      {balance.positions.map((position) => (
        <Position key={position.positionId} balance={balance} position={position} />
      ))}
    </div>
  );
}
