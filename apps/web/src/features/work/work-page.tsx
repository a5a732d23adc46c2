import { holderWords, useMay } from '../../server/authority.js';
import { useReadOnly } from '../../server/session.js';
import { ActionLink } from '../../ui/actions/action-link.js';
import { Button } from '../../ui/actions/button.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import { MyWork } from './my-work.js';
import { PackageList } from './package-list.js';
import './work.css';

function Actions() {
  const mayOpen = useMay('open-a-package');
  const mayLog = useMay('log-a-change');
  const readOnly = useReadOnly();
  if (readOnly) return null;
  return (
    <>
      {mayLog && <ActionLink href="/changes/new">Log a past change</ActionLink>}
      {mayOpen ? (
        <ActionLink kind="primary" href="/packages/new">
          Open a package
        </ActionLink>
      ) : (
        <Button offBecause={`Opening a package needs the authority of: ${holderWords('open-a-package')}`}>
          Open a package
        </Button>
      )}
    </>
  );
}

/** What waits for whoever is signed in, and every package. */
export function WorkPage() {
  const signs = useMay('sign-steps');
  return (
    <>
      <PageHeading title="Work" actions={<Actions />} />
      {signs && <MyWork />}
      <PackageList />
    </>
  );
}
