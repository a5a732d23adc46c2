const LEFT_WING = 'M470 150 66 291Q56 295 54 308L52 321 350 250 470 258Z';
const LEFT_TAILPLANE = 'M481 366 392 399Q386 402 385 409L384 416 489 406Z';
const FUSELAGE =
  'M500 10C486 12 470 48 470 98V320C470 362 485 408 495 432H505C515 408 530 362 530 320V98C530 48 514 12 500 10Z';

/** One half; the other is its mirror. */
function Half() {
  return (
    <>
      <path className="aircraft-skin" d={LEFT_WING} />
      <path className="aircraft-seam" d="M118 291 346 234 466 238M232 263 236 279M346 234 350 250" />
      <path className="aircraft-skin" d={LEFT_TAILPLANE} />
      <path className="aircraft-seam" d="M398 405 486 395" />
    </>
  );
}

/** An aircraft of no maker, from above: nose up, so that left is left. */
export function AircraftOutline() {
  return (
    <g>
      <Half />
      <g transform="matrix(-1 0 0 1 1000 0)">
        <Half />
      </g>
      <path className="aircraft-skin" d={FUSELAGE} />
      <path className="aircraft-seam" d="M481 58Q500 46 519 58M478 70Q500 58 522 70M500 96V330" />
      <path className="aircraft-fin" d="M500 352V428" />
    </g>
  );
}
