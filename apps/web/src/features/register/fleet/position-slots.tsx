import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useMay } from '../../../server/authority.js';
import { useOfflineSince } from '../../../server/connection.js';
import { type Airframe, positionsQuery } from '../../../server/fleet.js';
import { Button } from '../../../ui/actions/button.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { OFF_WHILE_OFFLINE } from '../../../ui/messages/offline-bar.js';
import { SheetDialog } from '../../../ui/overlay/sheet-dialog.js';
import { PlaceForm } from '../placing/place-form.js';

type Position = Airframe['positions'][number];
type Slot = Position['slots'][number];

const SLOT_WORDS = { engine: 'Engine', pod: 'Pod', apu: 'Auxiliary power unit' } as const;

/** 'Engine, position 1'; the type's own name for the place is added where it says more. */
function slotName({ number, label }: Position, { kind }: Slot): string {
  if (kind === 'apu') return SLOT_WORDS.apu;
  const own = label === String(number) || label.toLowerCase() === `position ${number}` ? '' : `, ${label}`;
  return `${SLOT_WORDS[kind]}, position ${number}${own}`;
}

interface Asked {
  readonly position: Position;
  readonly slot: Slot;
}

/** The positions of an airframe, and first mounting what belongs there. */
export function PositionSlots({ airframe }: { readonly airframe: Airframe }) {
  const cards = useQuery(positionsQuery(airframe.id));
  const may = useMay('keep-records');
  const offline = useOfflineSince() !== null;
  const [asked, setAsked] = useState<Asked | null>(null);
  return (
    <Answered query={cards} doing="Reading the positions">
      {({ positions }) => {
        const held = (number: number, kind: Slot['kind']) => {
          const card = positions.find((entry) => entry.number === number);
          return kind === 'pod' ? card?.pod : card?.engine;
        };
        return (
          <>
            <ul className="slots" aria-label={`Positions of ${airframe.registration}`}>
              {airframe.positions.flatMap((position) =>
                position.slots.map((slot) => {
                  const there = held(position.number, slot.kind) ?? null;
                  const name = slotName(position, slot);
                  return (
                    <li key={slot.id} className="slot">
                      <div className="slot-line">
                        <strong>{name}</strong>
                        {there === null ? (
                          <span>Empty</span>
                        ) : (
                          <RouteLink href={`/register/components/${there.id}`}>
                            <span className="serial">{there.serialNumber}</span>
                          </RouteLink>
                        )}
                        {there === null && may && !offline ? (
                          <Button
                            aria-label={`Install: ${name}`}
                            onClick={() => setAsked({ position, slot })}
                          >
                            Install
                          </Button>
                        ) : (
                          <span />
                        )}
                      </div>
                    </li>
                  );
                }),
              )}
            </ul>
            {may && (
              <p className="quiet small">
                {offline
                  ? `Installing: ${OFF_WHILE_OFFLINE.toLowerCase()}.`
                  : 'What is mounted already is changed on the page Changes.'}
              </p>
            )}
            {asked !== null && (
              <SheetDialog
                title={`${slotName(asked.position, asked.slot)}, of ${airframe.registration}: install`}
                shape="sheet"
                open
                onClose={() => setAsked(null)}
              >
                <PlaceForm
                  slotId={asked.slot.id}
                  kind={asked.slot.kind}
                  airframeKnown
                  onPlaced={(serial) => {
                    announce(
                      `${serial} was installed on ${airframe.registration}: ${slotName(asked.position, asked.slot).toLowerCase()}.`,
                    );
                    setAsked(null);
                  }}
                />
              </SheetDialog>
            )}
          </>
        );
      }}
    </Answered>
  );
}
