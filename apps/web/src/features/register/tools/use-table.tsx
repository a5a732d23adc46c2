import { counted } from '../../../format/counts.js';
import { momentText } from '../../../format/when.js';
import type { ToolUse } from '../../../server/tools.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';

const COLUMNS: readonly Column<ToolUse>[] = [
  {
    id: 'at',
    header: 'When',
    cell: ({ enteredAt }) => momentText(enteredAt),
    sortBy: ({ enteredAt }) => enteredAt,
  },
  {
    id: 'package',
    header: 'Package',
    cell: ({ packageId, packageNumber }) => (
      <RouteLink href={`/packages/${packageId}`} className="serial">
        {packageNumber}
      </RouteLink>
    ),
    sortBy: ({ packageNumber }) => packageNumber,
    namesRow: true,
  },
  {
    id: 'step',
    header: 'Step',
    cell: ({ stepNumber, stepTitle }) => `${stepNumber} ${stepTitle}`,
    sortBy: ({ stepNumber }) => stepNumber,
  },
  {
    id: 'what',
    header: 'What',
    cell: ({ label, point }) => (point === null ? label : `${label}, ${point}`),
  },
  { id: 'typed', header: 'As typed', cell: ({ typed }) => typed, align: 'figures' },
  {
    id: 'verdict',
    header: 'Verdict',
    cell: ({ verdict, voided }) =>
      voided ? (
        <strong className="fact-voided">Voided</strong>
      ) : verdict === 'accepted' ? (
        <StatusMark status="in-limits" word="Accepted" />
      ) : (
        <StatusMark status="rejected" word="Rejected" />
      ),
  },
  { id: 'by', header: 'By', cell: ({ personName }) => personName, sortBy: ({ personName }) => personName },
];

interface UseTableProps {
  readonly uses: readonly ToolUse[];
  readonly inAll: number;
}

/** Where a tool was used: what to look at again when it is found to be out. */
export function UseTable({ uses, inAll }: UseTableProps) {
  return (
    <>
      {inAll > uses.length && (
        <p className="quiet">
          The newest {uses.length} of {counted(inAll, 'reading')}.
        </p>
      )}
      <DataTable
        caption="Readings taken with it"
        captionHidden
        columns={COLUMNS}
        rows={uses}
        rowKey={({ entryId }) => entryId}
        order={{ column: 'at', descending: true }}
        struck={({ voided }) => voided}
        empty={<EmptyState>No reading was taken with it yet.</EmptyState>}
      />
    </>
  );
}
