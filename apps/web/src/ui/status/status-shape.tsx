import type { ReactElement } from 'react';
import { STATUS_LOOKS, type Status } from './statuses.js';
import './status.css';

const line = { fill: 'none', stroke: 'currentColor', strokeWidth: 2 } as const;
const solid = { fill: 'currentColor' } as const;

const OCTAGON = 'M5 1h6l4 4v6l-4 4H5l-4-4V5z';

/** Shapes on a grid of 16. Each is told from the others without colour. */
const SHAPES: Readonly<Record<Status, ReactElement>> = {
  'in-limits': <circle cx="8" cy="8" r="5.5" {...line} />,
  plan: (
    <>
      <circle cx="8" cy="8" r="6" {...line} />
      <path d="M8 2a6 6 0 0 0 0 12z" {...solid} />
    </>
  ),
  soon: <path d="M8 1.5 15.5 15H.5z" {...solid} />,
  'over-limit': <path d={OCTAGON} {...solid} />,
  'in-tolerance': (
    <>
      <path d={OCTAGON} {...line} strokeWidth={1.5} />
      <path d="M8 4.2 11.9 11.5H4.1z" {...solid} />
    </>
  ),
  'not-verified': <rect x="2" y="2" width="12" height="12" {...line} strokeDasharray="3 1.8" />,
  blocked: <path d="M3 2h3.5v12H3zM9.5 2H13v12H9.5z" {...solid} />,
  open: <rect x="2" y="2" width="12" height="12" {...line} />,
  signed: (
    <>
      <rect x="2" y="2" width="12" height="12" {...line} />
      <path d="m4.8 8.2 2.4 2.6 4.2-5.4" {...line} />
    </>
  ),
  'to-inspect': <path d="M8 1.2 14.8 8 8 14.8 1.2 8z" {...line} />,
  finding: (
    <path
      d="M2.5 1v15M3 2h10.5l-3 3.5 3 3.5H3z"
      fill="currentColor"
      stroke="currentColor"
      strokeWidth={1.6}
    />
  ),
  changed: (
    <>
      <rect x="2" y="2" width="12" height="12" {...line} strokeDasharray="3 1.8" />
      <path d="m4.8 8.2 2.4 2.6 4.2-5.4" {...line} />
    </>
  ),
  rejected: (
    <>
      <path d={OCTAGON} {...line} />
      <path d="m5.2 5.2 5.6 5.6M10.8 5.2l-5.6 5.6" {...line} />
    </>
  ),
  'not-applicable': <path d="M2 8h12" {...line} strokeWidth={2.5} />,
  closed: (
    <>
      <rect x="2" y="2" width="12" height="12" {...line} />
      <path d="M2 14 14 2" {...line} />
    </>
  ),
};

interface StatusShapeProps {
  readonly status: Status;
  /** In pixels, or in the units of the drawing that holds it. */
  readonly size?: number;
  /** Place in a drawing. */
  readonly x?: number;
  readonly y?: number;
}

/** The shape alone; the word always stands beside it. */
export function StatusShape({ status, size = 16, x, y }: StatusShapeProps) {
  return (
    <svg
      className={`status-shape tone-${STATUS_LOOKS[status].tone}`}
      width={size}
      height={size}
      x={x}
      y={y}
      viewBox="0 0 16 16"
      aria-hidden="true"
    >
      {SHAPES[status]}
    </svg>
  );
}
