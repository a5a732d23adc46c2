import { useInfiniteQuery } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { thousands } from '../../format/hours.js';
import { momentText } from '../../format/when.js';
import { holderWords, useMay } from '../../server/authority.js';
import { useOfflineSince } from '../../server/connection.js';
import { Button } from '../../ui/actions/button.js';
import { RouteLink } from '../../ui/actions/route-link.js';
import { AuthorityNote } from '../../ui/messages/authority-note.js';
import { EmptyState } from '../../ui/messages/empty-state.js';
import { OFF_WHILE_OFFLINE } from '../../ui/messages/offline-bar.js';
import { PageHeading } from '../../ui/page/page-heading.js';
import type { Column } from '../../ui/table/column.js';
import { DataTable } from '../../ui/table/data-table.js';
import { readState } from '../../ui/table/read-state.js';
import { ChooseFile } from './choose-file.js';
import { type ImportRow, importsQuery } from './imports-data.js';
import { StateMark } from './state-mark.js';
import './imports.css';

const COLUMNS: readonly Column<ImportRow>[] = [
  {
    id: 'file',
    header: 'File',
    cell: (row) => <RouteLink href={`/imports/${row.id}`}>{row.fileName}</RouteLink>,
    namesRow: true,
  },
  { id: 'state', header: 'State', cell: (row) => <StateMark {...row} /> },
  { id: 'rows', header: 'Rows', align: 'figures', cell: (row) => thousands(row.rows) },
  { id: 'ready', header: 'New', align: 'figures', cell: (row) => thousands(row.ready) },
  { id: 'already', header: 'On record', align: 'figures', cell: (row) => thousands(row.already) },
  { id: 'failed', header: 'With errors', align: 'figures', cell: (row) => thousands(row.failed) },
  { id: 'by', header: 'Brought by', cell: (row) => row.createdBy },
  { id: 'at', header: 'When', cell: (row) => momentText(row.createdAt) },
];

/** Files of flights: brought, checked, applied. */
export function ImportsPage() {
  const files = useInfiniteQuery(importsQuery);
  const navigate = useNavigate();
  const may = useMay('keep-records');
  const offline = useOfflineSince() !== null;
  const rows = files.data?.pages.flatMap((page) => page.rows) ?? [];
  return (
    <>
      <PageHeading
        title="Imports"
        below={!may && <AuthorityNote act="Files are checked and applied" by={holderWords('keep-records')} />}
      />
      {may && (
        <ChooseFile
          offBecause={offline ? OFF_WHILE_OFFLINE : null}
          onTaken={(importId) => void navigate({ to: '/imports/$importId', params: { importId } })}
        />
      )}
      <DataTable
        caption="Files, newest first"
        columns={COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        state={readState(files)}
        empty={<EmptyState>No file was brought yet.{may ? ' Choose one above.' : ''}</EmptyState>}
      />
      {files.hasNextPage && (
        <div>
          <Button busy={files.isFetchingNextPage} onClick={() => void files.fetchNextPage()}>
            Show older files
          </Button>
        </div>
      )}
    </>
  );
}
