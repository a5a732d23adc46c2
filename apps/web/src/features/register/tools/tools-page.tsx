import { useQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue } from 'react';
import { counted } from '../../../format/counts.js';
import { useMay } from '../../../server/authority.js';
import { type Tool, toolsQuery } from '../../../server/tools.js';
import { RouteLink } from '../../../ui/actions/route-link.js';
import { SelectField } from '../../../ui/fields/select-field.js';
import { TextField } from '../../../ui/fields/text-field.js';
import { announce } from '../../../ui/messages/announcements.js';
import { EmptyState } from '../../../ui/messages/empty-state.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import type { Column } from '../../../ui/table/column.js';
import { DataTable } from '../../../ui/table/data-table.js';
import { readState } from '../../../ui/table/read-state.js';
import { RegisterFrame } from '../register-frame.js';
import { ToolForm } from './tool-form.js';
import { deviationText, dueText, kindWord, lookOf, rangeText, STATUS_CHOICES } from './tool-words.js';

export const TOOLS_KEPT = { act: 'Tools are kept', authority: 'keep-tools' } as const;

const COLUMNS: readonly Column<Tool>[] = [
  {
    id: 'status',
    header: 'Calibration',
    cell: (tool) => {
      const { status, word } = lookOf(tool);
      return <StatusMark status={status} word={word} />;
    },
    sortBy: (tool) => `${lookOf(tool).rank} ${tool.dueOn ?? ''} ${tool.serialNumber}`,
  },
  {
    id: 'serial',
    header: 'Serial number',
    cell: ({ id, serialNumber }) => (
      <RouteLink href={`/tools/${id}`} className="serial">
        {serialNumber}
      </RouteLink>
    ),
    sortBy: ({ serialNumber }) => serialNumber,
    namesRow: true,
  },
  {
    id: 'what',
    header: 'What it is',
    cell: ({ description }) => description,
    sortBy: ({ description }) => description,
  },
  { id: 'range', header: 'Range', cell: rangeText },
  { id: 'deviation', header: 'Deviation', cell: deviationText },
  { id: 'due', header: 'Good through', cell: dueText, sortBy: ({ dueOn }) => dueOn },
];

const holds = (tool: Tool, wanted: string): boolean =>
  [tool.serialNumber, tool.description, kindWord(tool.kind), tool.unit ?? '', tool.certificate ?? ''].some(
    (text) => text.toLowerCase().includes(wanted),
  );

function Filters({ shown }: { readonly shown: number | null }) {
  const search = useSearch({ from: '/signed-in/tools' });
  const navigate = useNavigate();
  const put = (next: { find?: string; status?: string }) => {
    const { find = '', status = '' } = { ...search, ...next };
    void navigate({
      to: '/tools',
      search: { ...(find === '' ? {} : { find }), ...(status === '' ? {} : { status }) },
      replace: true,
    });
  };
  return (
    <search className="field-row">
      <TextField
        label="Find"
        hint="Serial number, what it is, unit"
        type="search"
        value={search.find ?? ''}
        onChange={({ target }) => put({ find: target.value })}
      />
      <SelectField
        label="Calibration"
        unchosen="Any"
        options={STATUS_CHOICES}
        value={search.status ?? ''}
        onChange={({ target }) => put({ status: target.value })}
      />
      {shown !== null && <p role="status">{counted(shown, 'tool')}</p>}
    </search>
  );
}

/** Tools that are calibrated, those that may not be used on top. */
export function ToolsPage() {
  const tools = useQuery(toolsQuery);
  const may = useMay('keep-tools');
  const navigate = useNavigate();
  const { find = '', status } = useSearch({ from: '/signed-in/tools' });
  const wanted = useDeferredValue(find.trim().toLowerCase());
  const all = tools.data ?? [];
  const rows = all.filter(
    (tool) => (status === undefined || tool.status === status) && (wanted === '' || holds(tool, wanted)),
  );
  return (
    <RegisterFrame
      title="Tools"
      below={<p>Calibration as of today, in UTC. A tool is good through the day shown.</p>}
      kept={TOOLS_KEPT}
      add={{
        word: 'Add a tool',
        form: (close) => (
          <ToolForm
            onAdded={({ id, serialNumber }) => {
              announce(`Tool ${serialNumber} was added. Record its calibration before it is used.`);
              close();
              void navigate({ to: '/tools/$toolId', params: { toolId: id } });
            }}
          />
        ),
      }}
    >
      <Filters shown={tools.data === undefined ? null : rows.length} />
      <DataTable
        caption="Tools"
        captionHidden
        columns={COLUMNS}
        rows={rows}
        rowKey={({ id }) => id}
        order={{ column: 'status', descending: false }}
        state={readState(tools)}
        empty={
          <EmptyState>
            {all.length > 0
              ? 'No tool matches what is asked for above.'
              : `No tool is recorded${may ? '. Add the torque wrenches and gauges that readings are taken with.' : '.'}`}
          </EmptyState>
        }
      />
    </RegisterFrame>
  );
}
