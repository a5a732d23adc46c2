import type { ReactNode } from 'react';

interface GallerySectionProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** One family of parts. */
export function GallerySection({ title, children }: GallerySectionProps) {
  return (
    <section className="stack" aria-label={title}>
      <h2 className="section-heading">{title}</h2>
      {children}
    </section>
  );
}
