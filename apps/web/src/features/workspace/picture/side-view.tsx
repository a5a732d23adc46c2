import type { PodPlace } from '@strutbook/domain/work/step.js';
import type { ReactElement } from 'react';

const WING = 'M150 4H396V20L214 25Q184 16 150 13Z';
const STRUT = 'M112 52 208 24 344 21 336 40 286 70 262 88H236L150 50Z';
const INLET = 'M26 62Q14 110 26 158L76 167V53Z';
const LIP = 'M26 62Q40 110 26 158';
const FAN_COWL = 'M76 53 150 50V170L76 167Z';
const REVERSER = 'M150 50 236 64V156L150 170Z';
const AFT = 'M236 78 292 88V132L236 142Z';
const NOZZLE = 'M292 88 318 94V126L292 132Z';
const PLUG = 'M318 100 360 110 318 120Z';
const CORE = 'M132 84 286 92V128L132 136Z';
const STAND = 'M70 192H300M96 192 112 168M274 192 240 158M112 192 150 170M256 192 226 160';

/** What is drawn heavily for a place. Mounts are hidden by the cowls: the mark lies over them. */
const MARKS: Readonly<Partial<Record<PodPlace, ReactElement>>> = {
  inlet: <path d={INLET} />,
  'fan-cowls': <path d={FAN_COWL} />,
  reverser: <path d={REVERSER} />,
  'core-left': <path d={CORE} />,
  'core-right': <path d={CORE} />,
  gearbox: <path d="M92 148H142V166Q117 178 92 166Z" />,
  'forward-mount': <circle cx="150" cy="60" r="13" />,
  'aft-mount': <circle cx="262" cy="86" r="13" />,
  strut: <path d={STRUT} />,
  exhaust: (
    <>
      <path d={NOZZLE} />
      <path d={PLUG} />
    </>
  ),
  stand: <path d={STAND} />,
  ground: <path d="M2 190H398V198H2Z" />,
};

interface SideViewProps {
  readonly place: PodPlace;
  /** Seen from the right, the nose points to the right. */
  readonly from: 'left' | 'right';
}

/** The pod on its strut from the side: inlet, fan cowl, reverser, core and exhaust of no maker. */
export function SideView({ place, from }: SideViewProps) {
  const hung = place !== 'stand';
  return (
    <g transform={from === 'left' ? undefined : 'matrix(-1 0 0 1 400 0)'}>
      {hung && (
        <>
          <path className="pod-skin" d={WING} />
          <path className="pod-skin" d={STRUT} />
        </>
      )}
      <path className="pod-skin" d={PLUG} />
      <path className="pod-skin" d={NOZZLE} />
      <path className="pod-skin" d={AFT} />
      <path className="pod-skin" d={REVERSER} />
      <path className="pod-skin" d={FAN_COWL} />
      <path className="pod-skin" d={INLET} />
      <path className="pod-seam" d={`${LIP}M92 110H144M166 68V152`} />
      <path className="pod-inside" d={CORE} />
      <path className="pod-inside" d="M98 62V158" />
      <g className="pod-mark">{MARKS[place]}</g>
    </g>
  );
}
