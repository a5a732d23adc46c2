import type { PodPlace } from '@strutbook/domain/work/step.js';

const LEFT_HALF = 'M96 42A62 62 0 0 0 96 166V148A44 44 0 0 1 96 60Z';
const RIGHT_HALF = 'M104 42A62 62 0 0 1 104 166V148A44 44 0 0 0 104 60Z';

/** The pod from the front, so that the halves of the cowls can be told from each other. */
export function FrontView({ place }: { readonly place: PodPlace }) {
  return (
    <g>
      <path className="pod-skin" d="M4 12 196 4V18L118 24 112 44H88L82 26 4 28Z" />
      <circle className="pod-skin" cx="100" cy="104" r="62" />
      <path className="pod-seam" d="M100 42V60M100 148V166" />
      <circle className="pod-skin" cx="100" cy="104" r="44" />
      <path
        className="pod-seam"
        d="M100 90V60M110 94 131 73M114 104H144M110 114 131 135M100 118V148M90 114 69 135M86 104H56M90 94 69 73"
      />
      <circle className="pod-skin" cx="100" cy="104" r="14" />
      <g className="pod-mark">
        {place === 'inlet' ? (
          <circle className="pod-ring" cx="100" cy="104" r="53" />
        ) : (
          <>
            <path d={LEFT_HALF} />
            <path d={RIGHT_HALF} />
          </>
        )}
      </g>
      <text x="18" y="188" className="pod-word">
        right
      </text>
      <text x="182" y="188" textAnchor="end" className="pod-word">
        left
      </text>
    </g>
  );
}

const BODY = 'M22 116Q30 92 66 86H300L352 40H380L366 90Q372 104 352 112L300 126H66Q30 130 22 116Z';

/** The nose of the airframe, for what is done in the cockpit. */
export function NoseView() {
  return (
    <g>
      <path className="pod-skin" d={BODY} />
      <path className="pod-skin" d="M150 112 250 150H276L214 108Z" />
      <path className="pod-skin" d="M172 128Q168 140 174 150H220V128Z" />
      <path className="pod-seam" d="M90 98H286M2 178H398M84 126V168M196 150V168" />
      <g className="pod-mark">
        <path d="M40 98 52 89H84V104H38Z" />
      </g>
    </g>
  );
}
