/** Strutbook's mark: a wing, a post and the strut between them. */
export function Mark({ size = 24 }: { readonly size?: number }) {
  return (
    <svg className="mark" width={size} height={size} viewBox="0 0 32 32" aria-hidden="true">
      <rect width="32" height="32" fill="var(--action)" />
      <path d="M4 8.5h24M10 8.5V28M10 25 25 8.5" fill="none" stroke="var(--on-action)" strokeWidth="4" />
    </svg>
  );
}
