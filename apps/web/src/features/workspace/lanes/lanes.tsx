import { type ReactNode, useEffect, useState } from 'react';
import type { Step, Work } from '../work/work-shapes.js';
import { GroupPart } from './group-part.js';
import { listenToKeys, type StepKeys } from './lane-keys.js';
import { hasLanes, type Lane, type LaneName, lanesOf, signedOf } from './lane-parts.js';
import './lanes.css';

const NAMES: Readonly<Record<LaneName, string>> = {
  before: 'Before',
  out: 'Out',
  in: 'In',
  after: 'After',
};

interface LanesProps extends StepKeys {
  readonly work: Work;
  readonly openId: string | null;
  readonly onOpen: (step: Step | null) => void;
  readonly panelOf: (step: Step) => ReactNode;
}

const holds = (lane: Lane, stepId: string | null): boolean =>
  lane.groups.some(({ steps }) => steps.some(({ id }) => id === stepId));

/** The lane where something can be done, for narrow screens that show one. */
const firstOpen = (lanes: readonly Lane[]): Lane | undefined =>
  lanes.find(({ groups }) => {
    const { signed, total } = signedOf(groups);
    return signed < total;
  }) ?? lanes[0];

function serialOf(name: LaneName, { order }: Work): string | null {
  if (name === 'out') return order?.outgoing?.serialNumber ?? null;
  return name === 'in' ? (order?.incoming?.serialNumber ?? null) : null;
}

interface HeadProps {
  readonly work: Work;
  readonly name: LaneName;
  readonly shown: boolean;
}

/** Out and in show the serial of their engine; the others are named for those who hear the page. */
function LaneHead({ work, name, shown }: HeadProps) {
  if (!shown) return <h2 className="visually-hidden">Steps</h2>;
  if (name !== 'out' && name !== 'in') return <h2 className="visually-hidden">{NAMES[name]}</h2>;
  return (
    <h2 className="lane-head">
      {NAMES[name]} <span className="serial">{serialOf(name, work) ?? 'nothing ordered'}</span>
    </h2>
  );
}

interface SwitchProps {
  readonly lanes: readonly Lane[];
  readonly shown: LaneName;
  readonly onShow: (name: LaneName) => void;
}

/** On narrow screens one lane is shown at a time. */
function LaneSwitch({ lanes, shown, onShow }: SwitchProps) {
  return (
    <fieldset className="lane-switch">
      <legend className="visually-hidden">Lane</legend>
      {lanes.map(({ name, groups }) => {
        const { signed, total } = signedOf(groups);
        return (
          <button key={name} type="button" aria-pressed={name === shown} onClick={() => onShow(name)}>
            {NAMES[name]}{' '}
            <span className="lane-count">
              {signed}/{total}
            </span>
          </button>
        );
      })}
    </fieldset>
  );
}

/** The steps of a package by groups: two lanes where something goes out and something goes in, else one list. */
export function Lanes({ work, openId, onOpen, panelOf, onReading, onSign }: LanesProps) {
  const lanes = lanesOf(work);
  const twoLanes = hasLanes(work);
  const [chosen, setChosen] = useState<LaneName | null>(null);
  const withOpen = lanes.find((lane) => holds(lane, openId))?.name ?? null;
  useEffect(() => {
    if (withOpen !== null) setChosen(withOpen);
  }, [withOpen]);
  const shown = chosen ?? withOpen ?? firstOpen(lanes)?.name ?? 'after';
  return (
    // The rows are the controls; the keys move between them.
    // biome-ignore lint/a11y/noStaticElementInteractions: hears the keys of its rows
    <div
      className={twoLanes ? 'lanes lanes-two' : 'lanes'}
      onKeyDown={(event) => listenToKeys(event, { onReading, onSign })}
    >
      {twoLanes && <LaneSwitch lanes={lanes} shown={shown} onShow={setChosen} />}
      {lanes.map((lane) => (
        <section
          key={lane.name}
          data-lane={lane.name}
          className={`lane lane-${lane.name}${twoLanes && lane.name !== shown ? ' lane-aside' : ''}`}
          aria-label={twoLanes ? NAMES[lane.name] : 'Steps'}
        >
          <LaneHead work={work} name={lane.name} shown={twoLanes} />
          {lane.groups.map((group) => (
            <GroupPart key={group.key} {...{ group, openId, onOpen, panelOf }} />
          ))}
        </section>
      ))}
    </div>
  );
}
