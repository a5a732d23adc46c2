import { Link } from '@tanstack/react-router';
import { type ReactNode, useState } from 'react';
import { type Authority, holderWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { Button } from '../../ui/actions/button.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../ui/overlay/sheet-dialog.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import './register.css';

const PAGES = [
  { to: '/register', name: 'Overview' },
  { to: '/register/airframe-types', name: 'Airframe types' },
  { to: '/register/airframes', name: 'Airframes' },
  { to: '/register/engine-models', name: 'Engine models' },
  { to: '/register/life-limits', name: 'Life limits' },
  { to: '/register/locations', name: 'Locations' },
  { to: '/register/components', name: 'Components' },
  { to: '/tools', name: 'Tools' },
  { to: '/procedures', name: 'Procedures' },
  { to: '/requirements', name: 'Requirements' },
] as const;

export interface AddedBy {
  /** 'Add an airframe type': the button's word and the form's title. */
  readonly word: string;
  /** Why nothing can be added now, beside a missing connection. */
  readonly offBecause?: string | null | undefined;
  readonly form: (close: () => void) => ReactNode;
}

/** What is kept on a page, and by whom. */
export interface Kept {
  /** 'Tools are kept' */
  readonly act: string;
  readonly authority: Authority;
}

const REGISTER: Kept = { act: 'The register is kept', authority: 'keep-records' };

interface RegisterFrameProps {
  readonly title: string;
  readonly serial?: string | undefined;
  readonly below?: ReactNode;
  readonly add?: AddedBy | undefined;
  readonly kept?: Kept;
  readonly children: ReactNode;
}

/** A page of the register: its heading, the way to the others, and adding in a sheet from the side. */
export function RegisterFrame({ title, serial, below, add, kept = REGISTER, children }: RegisterFrameProps) {
  const may = useMay(kept.authority);
  const offline = useOfflineSince() !== null;
  const [adding, setAdding] = useState(false);
  const close = () => setAdding(false);
  return (
    <>
      <PageHeading
        title={title}
        serial={serial}
        below={
          <>
            {below}
            {!may && <AuthorityNote act={kept.act} by={holderWords(kept.authority)} />}
          </>
        }
        actions={
          add !== undefined && may ? (
            <Button
              kind="primary"
              offBecause={offline ? OFF_WHILE_OFFLINE : add.offBecause}
              onClick={() => setAdding(true)}
            >
              {add.word}
            </Button>
          ) : undefined
        }
      />
      <nav className="register-pages no-print" aria-label="Register">
        <ul>
          {PAGES.map(({ to, name }) => (
            <li key={to}>
              <Link
                to={to}
                activeOptions={{ exact: to === '/register' }}
                activeProps={{ 'aria-current': 'page' }}
              >
                {name}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {children}
      {add !== undefined && (
        <SheetDialog title={add.word} shape="sheet" open={adding} onClose={close}>
          {add.form(close)}
        </SheetDialog>
      )}
    </>
  );
}
