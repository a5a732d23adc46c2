/** Strutbook's mark: two posts and the strut between them. */
export function Mark({ size = 24 }: { readonly size?: number }) {
  return (
    <svg className="mark" width={size} height={size} viewBox="0 0 32 32" aria-hidden="true">
      <rect width="32" height="32" fill="var(--action)" />
      <path d="M9 5v22M23 5v22M9 25 23 7" fill="none" stroke="var(--on-action)" strokeWidth="4" />
    </svg>
  );
}
