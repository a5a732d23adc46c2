import { useMay } from '../../server/authority.js';
import type { ComponentView } from '../../server/wire.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';

const slotOf = (kind: ComponentView['kind']) =>
  kind === 'engine' || kind === 'pod' || kind === 'apu' ? kind : null;

function removalHref({ kind, place, serialNumber }: ComponentView): string | null {
  const slot = slotOf(kind);
  if (slot === null || place.airframeId === null || place.positionNumber === null) return null;
  return `/changes/new?airframe=${place.airframeId}&position=${place.positionNumber}&slot=${slot}&off=${encodeURIComponent(serialNumber)}`;
}

const PACKAGES = {
  engine: ['engine-change', 'Start engine change'],
  pod: ['pod-swap', 'Start pod swap'],
  apu: ['component-change', 'Start a change of the APU'],
} as const;

/** Work on it: its change where it stands on an airframe, else a package of its own. */
function work({ id, kind, place }: ComponentView): { readonly href: string; readonly word: string } {
  const slot = slotOf(kind);
  if (slot === null || place.airframeId === null || place.positionNumber === null)
    return { href: `/packages/new?component=${id}`, word: 'Open a package' };
  const [packageKind, word] = PACKAGES[slot];
  return {
    href: `/packages/new?kind=${packageKind}&airframe=${place.airframeId}&position=${place.positionNumber}&slot=${slot}`,
    word,
  };
}

/** Where to go on from a component: work on it, its history. The past is not worked on. */
export function ComponentActions({
  component,
  at,
}: {
  readonly component: ComponentView;
  /** The instant shown; undefined is now. */
  readonly at: string | undefined;
}) {
  const now = at === undefined;
  const holdsLives = component.lifeLimited || component.slots.length > 0;
  const mayLog = useMay('log-a-change');
  const mayOpen = useMay('open-a-package');
  const removal = removalHref(component);
  const start = work(component);
  return (
    <>
      {mayOpen && now && <ActionLink href={start.href}>{start.word}</ActionLink>}
      {mayLog && now && removal !== null && <ActionLink href={removal}>Log its removal</ActionLink>}
      {holdsLives && (
        <ActionLink
          href={`/components/${component.id}/life-status${now ? '' : `?at=${encodeURIComponent(at)}`}`}
        >
          Status of limited parts
        </ActionLink>
      )}
      <ActionLink href={`/history/components/${component.id}`}>History</ActionLink>
      <Button onClick={() => window.print()}>Print</Button>
    </>
  );
}
