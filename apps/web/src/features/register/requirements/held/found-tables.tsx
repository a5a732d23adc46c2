import { useState } from 'react';
import { hoursMinutes, thousands } from '../../../../format/hours.js';
import { calendarDate } from '../../../../format/utc-date.js';
import { Button } from '../../../../ui/actions/button.js';
import { EmptyState } from '../../../../ui/messages/empty-state.js';
import { SerialText } from '../../../../ui/status/serial-text.js';
import { StatusMark } from '../../../../ui/status/status-mark.js';
import { Voided } from '../../../../ui/status/voided.js';
import type { Column } from '../../../../ui/table/column.js';
import { DataTable } from '../../../../ui/table/data-table.js';
import { VoidDialog } from '../../void-dialog.js';
import { voidAssessment, voidVariation } from '../requirement-acts.js';
import { type Assessment, type Variation, WHAT_IS_DUE } from '../requirement-queries.js';

const ASSESSMENTS: readonly Column<Assessment>[] = [
  {
    id: 'subject',
    header: 'Assessed for',
    namesRow: true,
    cell: ({ subject, voided, voidReason }) => (
      <>
        <SerialText>{subject}</SerialText>
        {voided && <Voided reason={voidReason} />}
      </>
    ),
  },
  {
    id: 'applies',
    header: 'Found',
    cell: ({ applicable, reason }) => (
      <>
        <StatusMark
          status={applicable ? 'open' : 'not-applicable'}
          word={applicable ? 'Applies' : 'Not applicable'}
        />
        {reason !== null && <span className="duty-reason small">{reason}</span>}
      </>
    ),
  },
  { id: 'revision', header: 'Revision', cell: ({ revision }) => <span className="serial">{revision}</span> },
  { id: 'method', header: 'Method', cell: ({ method }) => method ?? '' },
  {
    id: 'by',
    header: 'Assessed',
    cell: ({ assessedBy, reference, on }) => (
      <>
        {calendarDate(on)}, {assessedBy}
        <span className="duty-reason small quiet">{reference}</span>
      </>
    ),
  },
];

const farText = ({ minutes, cycles, days }: Variation): string =>
  [
    ...(minutes === null ? [] : [`${hoursMinutes(minutes)} h`]),
    ...(cycles === null ? [] : [`${thousands(cycles)} cycles`]),
    ...(days === null ? [] : [`${days} days`]),
  ].join(', ');

const VARIATIONS: readonly Column<Variation>[] = [
  {
    id: 'subject',
    header: 'On',
    namesRow: true,
    cell: ({ subject, voided, voidReason }) => (
      <>
        <SerialText>{subject}</SerialText>
        {voided && <Voided reason={voidReason} />}
      </>
    ),
  },
  { id: 'far', header: 'Past its due by', cell: farText },
  {
    id: 'by',
    header: 'Approved',
    cell: ({ approvedBy, reference, on }) => (
      <>
        {calendarDate(on)}, {approvedBy}
        <span className="duty-reason small quiet">{reference}</span>
      </>
    ),
  },
  { id: 'reason', header: 'Why', cell: ({ reason }) => <span className="duty-reason">{reason}</span> },
];

interface Found {
  readonly id: string;
  readonly subject: string;
  readonly voided: boolean;
}

interface TableProps<Row> {
  readonly rows: readonly Row[];
  readonly may: boolean;
}

interface FoundTableProps<Row extends Found> extends TableProps<Row> {
  readonly caption: string;
  /** 'assessment' */
  readonly noun: string;
  readonly columns: readonly Column<Row>[];
  readonly consequence: string;
  readonly perform: typeof voidAssessment;
  readonly empty: string;
}

function FoundTable<Row extends Found>(props: FoundTableProps<Row>) {
  const { rows, may, caption, noun, columns, consequence, perform, empty } = props;
  const [voiding, setVoiding] = useState<Row | null>(null);
  const act: Column<Row> = {
    id: 'void',
    header: 'Correct',
    cell: (row) =>
      row.voided ? (
        ''
      ) : (
        <Button onClick={() => setVoiding(row)} aria-label={`Void the ${noun} for ${row.subject}`}>
          Void
        </Button>
      ),
  };
  return (
    <>
      <DataTable
        caption={caption}
        captionHidden
        columns={may ? [...columns, act] : columns}
        rows={rows}
        rowKey={({ id }) => id}
        struck={({ voided }) => voided}
        empty={<EmptyState>{empty}</EmptyState>}
      />
      {voiding !== null && (
        <VoidDialog
          id={voiding.id}
          what={`${noun} for ${voiding.subject}`}
          consequence={consequence}
          perform={perform}
          refresh={WHAT_IS_DUE}
          said="What is due was computed again."
          onClose={() => setVoiding(null)}
        />
      )}
    </>
  );
}

/** Whether it applies, as was found, of all revisions of its code; voided ones stay, struck through. */
export function AssessmentTable({ rows, may }: TableProps<Assessment>) {
  return (
    <FoundTable
      rows={rows}
      may={may}
      caption="Assessments"
      noun="assessment"
      columns={ASSESSMENTS}
      consequence="It stays in sight, struck through, and counts no more: whether it applies is not known again, unless a wider assessment says so."
      perform={voidAssessment}
      empty="Nobody assessed whether it applies."
    />
  );
}

/** What was approved past its due, of all revisions of its code; voided ones stay, struck through. */
export function VariationTable({ rows, may }: TableProps<Variation>) {
  return (
    <FoundTable
      rows={rows}
      may={may}
      caption="Approved variations"
      noun="variation"
      columns={VARIATIONS}
      consequence="It stays in sight, struck through, and counts no more: it is due as without it."
      perform={voidVariation}
      empty="No variation was approved."
    />
  );
}
