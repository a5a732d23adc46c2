import { type ErrorComponentProps, useRouter } from '@tanstack/react-router';
import { ProblemPanel } from '../ui/messages/problem-panel.js';
import { PageHeading } from '../ui/page/page-heading.js';

/** A page that failed. The frame around it stays, and so do the other pages. */
export function PageError({ error, reset }: ErrorComponentProps) {
  const router = useRouter();
  const again = () => {
    reset();
    void router.invalidate();
  };
  return (
    <>
      <PageHeading title="This page could not be shown" />
      <ProblemPanel error={error} onRetry={again} />
    </>
  );
}
