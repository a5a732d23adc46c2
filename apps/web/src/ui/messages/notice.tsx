import type { ReactNode } from 'react';
import './messages.css';

export type NoticeKind = 'note' | 'caution' | 'warning';

interface NoticeProps {
  readonly kind: NoticeKind;
  readonly children: ReactNode;
}

/** Warning: people may be hurt. Caution: things may be damaged. Note: worth knowing. */
const WORDS: Readonly<Record<NoticeKind, string>> = { warning: 'Warning', caution: 'Caution', note: 'Note' };

function Sign({ kind }: { readonly kind: NoticeKind }) {
  if (kind === 'note') return null;
  return (
    <svg width="20" height="18" viewBox="0 0 20 18" aria-hidden="true">
      <path d="M10 1.5 19 17H1z" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M10 6.5v5.5M10 13.5v2" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}

/** A safety word, always before the action it is about. */
export function Notice({ kind, children }: NoticeProps) {
  return (
    <div className={`notice notice-${kind}`} role="note" aria-label={WORDS[kind]}>
      <div className="notice-head">
        <Sign kind={kind} />
        {WORDS[kind]}
      </div>
      <div className="notice-body">{children}</div>
    </div>
  );
}
