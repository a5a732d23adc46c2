import { useRouter } from '@tanstack/react-router';
import { useMemo } from 'react';
import { exactCycles } from '../../format/cycles.js';
import type { Part, Slot } from '../../server/wire.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { markOfLife } from '../../ui/status/life-status.js';
import { SerialText } from '../../ui/status/serial-text.js';
import { StatusMark } from '../../ui/status/status-mark.js';
import type { Status } from '../../ui/status/statuses.js';
import { type Branch, RecordTree } from '../../ui/tree/record-tree.js';
import { leftText, usedText } from './life-words.js';
import { tightestIn } from './limited-parts.js';

interface Told {
  readonly slot: Slot;
  readonly status: Status | null;
  /** What is left, of the part's own life or of the tightest in it. */
  readonly left: string;
  readonly used: string | null;
}

const isLimited = (part: Part): boolean =>
  part.lifeLimited || (part.life !== null && part.life.kind !== 'not-limited');

/** A part tells its own life; a module tells that of its tightest part. */
function tellSlot(slot: Slot): Told {
  const { component: part } = slot;
  if (part === null)
    return slot.lifeLimited
      ? { slot, status: 'not-verified', left: 'No part recorded', used: null }
      : { slot, status: null, left: 'Nothing recorded here', used: null };
  if (isLimited(part)) {
    const used = part.life !== null && part.life.kind === 'limited' ? usedText(part.life) : null;
    return { slot, status: markOfLife(part.life), left: leftText(part.life), used };
  }
  const tightest = tightestIn(part);
  if (tightest === null) return { slot, status: null, left: 'Nothing limited in it', used: null };
  const { slot: where, part: in_ } = tightest;
  return {
    slot,
    status: markOfLife(in_?.life ?? null),
    left: in_ === null ? 'A part is missing' : leftText(in_.life),
    used: `Tightest: ${in_?.description ?? where.name}`,
  };
}

const nameOf = ({ slot }: Told): string => slot.component?.description ?? slot.name;

function branchOf(slot: Slot, told: Map<string, Told>): Branch {
  const own = tellSlot(slot);
  told.set(slot.id, own);
  const { component: part } = slot;
  return {
    id: slot.id,
    words: [nameOf(own), slot.name, ...(part === null ? [] : [part.serialNumber])],
    branches: (part?.slots ?? []).map((inside) => branchOf(inside, told)),
  };
}

function TreeLine({ told }: { readonly told: Told }) {
  const { slot, status, left, used } = told;
  const part = slot.component;
  const cycles = part?.counters.sinceNew.cycles;
  return (
    <div className="part-line">
      <div>
        <strong>{nameOf(told)}</strong>
        {part !== null && slot.name !== part.description && <span className="quiet"> in {slot.name}</span>}
        {part !== null && (
          <p className="small">
            P/N <SerialText>{part.partNumber}</SerialText> S/N{' '}
            <RouteLink href={`/components/${part.id}`} tabIndex={-1}>
              <SerialText>{part.serialNumber}</SerialText>
            </RouteLink>
          </p>
        )}
      </div>
      <div>
        <strong>{left}</strong>
        {used !== null && <p className="small quiet">{used}</p>}
        {part !== null && (
          <p className="small quiet">
            {cycles == null ? 'Cycles since new not known' : `${exactCycles(cycles)} cycles since new`}
          </p>
        )}
      </div>
      <div>{status !== null && <StatusMark status={status} />}</div>
    </div>
  );
}

interface PartsTreeProps {
  /** 'Parts of engine KT-442' */
  readonly label: string;
  readonly slots: readonly Slot[];
}

/** Modules and parts, with what is left of each life. */
export function PartsTree({ label, slots }: PartsTreeProps) {
  const router = useRouter();
  const { branches, told } = useMemo(() => {
    const tellings = new Map<string, Told>();
    return { branches: slots.map((slot) => branchOf(slot, tellings)), told: tellings };
  }, [slots]);
  if (branches.length === 0)
    return <EmptyState>No modules or parts are recorded for it, so nothing can hang in it.</EmptyState>;
  return (
    <>
      <p className="small quiet no-print">
        Up and down walk, right opens, left closes, Enter opens the page, letters go to a serial or a name.
      </p>
      <RecordTree
        label={label}
        branches={branches}
        row={({ id }) => {
          const line = told.get(id);
          return line === undefined ? null : <TreeLine told={line} />;
        }}
        onOpen={({ id }) => {
          const part = told.get(id)?.slot.component;
          if (part != null) router.history.push(`/components/${part.id}`);
        }}
      />
    </>
  );
}
