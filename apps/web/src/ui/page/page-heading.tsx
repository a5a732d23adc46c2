import { type ReactNode, useEffect } from 'react';
import { PrintedAt } from '../print/printed-at.js';
import './page.css';

interface PageHeadingProps {
  readonly title: string;
  /** A serial in the heading is written in the letters of serials. */
  readonly serial?: string | undefined;
  /** The line below: totals and as of when. */
  readonly below?: ReactNode;
  readonly actions?: ReactNode;
}

/** The page's one main heading. Sets the window's title too. */
export function PageHeading({ title, serial, below, actions }: PageHeadingProps) {
  const whole = serial === undefined ? title : `${title} ${serial}`;
  useEffect(() => {
    document.title = `${whole} - Strutbook`;
  }, [whole]);
  return (
    <div className="page-heading">
      <div>
        <h1>
          {title}
          {serial !== undefined && (
            <>
              {' '}
              <span className="serial">{serial}</span>
            </>
          )}
        </h1>
        {below !== undefined && <div className="page-below">{below}</div>}
        <PrintedAt />
      </div>
      {actions !== undefined && <div className="row no-print">{actions}</div>}
    </div>
  );
}
