import type { ButtonKind } from './button.js';
import { RouteLink, type RouteLinkProps } from './route-link.js';
import './button.css';

export interface ActionLinkProps extends RouteLinkProps {
  readonly kind?: ButtonKind;
}

/** A link that looks like a button: it goes to the place where the act is done. */
export function ActionLink({ kind = 'secondary', className, ...rest }: ActionLinkProps) {
  return (
    <RouteLink
      {...rest}
      className={['button', `button-${kind}`, className ?? ''].filter(Boolean).join(' ')}
    />
  );
}
