import { useRouter } from '@tanstack/react-router';
import type { AnchorHTMLAttributes, MouseEvent, Ref } from 'react';

export interface RouteLinkProps extends AnchorHTMLAttributes<HTMLAnchorElement> {
  readonly href: string;
  readonly ref?: Ref<HTMLAnchorElement> | undefined;
}

const plainClick = (event: MouseEvent): boolean =>
  event.button === 0 &&
  !event.metaKey &&
  !event.ctrlKey &&
  !event.shiftKey &&
  !event.altKey &&
  !event.defaultPrevented;

/** A link to a place in Strutbook: an ordinary address, opened without loading the page anew. */
export function RouteLink({ href, onClick, children, ...rest }: RouteLinkProps) {
  const router = useRouter();
  const follow = (event: MouseEvent<HTMLAnchorElement>) => {
    onClick?.(event);
    if (!plainClick(event) || (rest.target ?? '_self') !== '_self') return;
    event.preventDefault();
    router.history.push(href);
  };
  return (
    <a {...rest} href={href} onClick={follow}>
      {children}
    </a>
  );
}
