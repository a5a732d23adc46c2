import type { ReactNode } from 'react';
import { utcMoment } from '../../format/utc-date.js';
import './print-sheet.css';

interface PrintSheetProps {
  readonly title: string;
  /** The serial or registration that must stand on every sheet. */
  readonly subject: string;
  /** When it was made, in minutes. */
  readonly madeAt: number;
  /** The basis, the rule set, the query: what the reader must know to trust it. */
  readonly basis?: ReactNode;
  readonly children: ReactNode;
}

/** A page made for paper: heading, basis and content, in ink alone. */
export function PrintSheet({ title, subject, madeAt, basis, children }: PrintSheetProps) {
  return (
    <article className="print-sheet">
      <header className="print-head">
        <h1>{title}</h1>
        <p className="serial">{subject}</p>
        <p className="small">Made {utcMoment(madeAt)} from the records as they stood then</p>
        {basis}
      </header>
      {children}
    </article>
  );
}

interface SignatureBlankProps {
  readonly what: string;
}

/** A blank for a signature on paper, for a step that is not yet signed. */
export function SignatureBlank({ what }: SignatureBlankProps) {
  return (
    <div className="print-blank">
      <span>{what}</span>
      <span>Name</span>
      <span>Signature</span>
      <span>Date and time, UTC</span>
    </div>
  );
}
