import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { counted } from '../../../format/counts.js';
import { packageKind } from '../../../format/package-words.js';
import { procedureFor } from '../../../format/procedure-for.js';
import { useMay } from '../../../server/authority.js';
import { type ProcedureRow, proceduresQuery } from '../../../server/procedures.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { CheckField } from '../../../ui/fields/check-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { RevisionForm } from './revision-form.js';

export const PROCEDURES_KEPT = { act: 'Procedures are kept', authority: 'keep-procedures' } as const;

const COLUMNS: readonly Column<ProcedureRow>[] = [
  {
    id: 'code',
    header: 'Procedure',
    cell: ({ id, code }) => (
      <RouteLink href={`/procedures/${id}`} className="serial">
        {code}
      </RouteLink>
    ),
    sortBy: ({ code }) => code,
    namesRow: true,
  },
  {
    id: 'revision',
    header: 'Revision',
    cell: ({ revision, latest }) => (latest ? revision : `${revision}, replaced`),
    sortBy: ({ revision }) => revision,
  },
  { id: 'title', header: 'What it is', cell: ({ title }) => title, sortBy: ({ title }) => title },
  {
    id: 'for',
    header: 'For',
    cell: (row) => procedureFor(row) ?? 'Any',
    sortBy: (row) => procedureFor(row) ?? '',
  },
  {
    id: 'kind',
    header: 'Work',
    cell: ({ kind }) => packageKind(kind),
    sortBy: ({ kind }) => packageKind(kind),
  },
  {
    id: 'steps',
    header: 'Steps',
    cell: ({ steps }) => steps,
    sortBy: ({ steps }) => steps,
    align: 'figures',
  },
  {
    id: 'document',
    header: 'Made from',
    cell: ({ document, documentRevision }) => `${document}, revision ${documentRevision}`,
    sortBy: ({ document }) => document,
  },
];

/** Procedures that packages are opened from. */
export function ProceduresPage() {
  const procedures = useQuery(proceduresQuery);
  const may = useMay('keep-procedures');
  const navigate = useNavigate();
  const { all = false } = useSearch({ from: '/signed-in/procedures' });
  const rows = (procedures.data ?? []).filter(({ latest }) => all || latest);
  return (
    <RegisterFrame
      title="Procedures"
      below={<p>A package gets its steps from a procedure when it is opened, and keeps them.</p>}
      kept={PROCEDURES_KEPT}
      add={{
        word: 'Record a revision',
        form: (close) => (
          <RevisionForm
            onRecorded={({ id, code, revision }) => {
              announce(`${code}, revision ${revision}, was recorded. Packages opened from now on follow it.`);
              close();
              void navigate({ to: '/procedures/$procedureId', params: { procedureId: id } });
            }}
          />
        ),
      }}
    >
      <div className="row">
        <CheckField
          label="Earlier revisions too"
          checked={all}
          onChange={({ target }) =>
            void navigate({ to: '/procedures', search: target.checked ? { all: true } : {}, replace: true })
          }
        />
        {procedures.data !== undefined && (
          <p role="status">{counted(rows.length, all ? 'revision' : 'procedure')}</p>
        )}
      </div>
      <DataTable
        caption="Procedures"
        captionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        order={{ column: 'code', descending: false }}
        state={readState(procedures)}
        empty={
          <EmptyState>
            No procedure is recorded{may ? '. Record one above from its file.' : '.'} Packages can be opened
            with steps of their own.
          </EmptyState>
        }
      />
    </RegisterFrame>
  );
}
