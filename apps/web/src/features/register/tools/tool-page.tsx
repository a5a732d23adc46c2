import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { useMay } from '../../../server/authority.js';
import { type ToolView, toolQuery } from '../../../server/tools.js';
import { announce } from '../../../ui/messages/announcements.js';
import { Answered } from '../../../ui/messages/answered.js';
import { type Fact, FactList } from '../../../ui/page/fact-list.js';
import { StatusMark } from '../../../ui/status/status-mark.js';
import { RegisterFrame } from '../register-frame.js';
import { CalibrationForm } from './calibration-form.js';
import { CalibrationTable } from './calibration-table.js';
import { deviationText, dueText, kindWord, lookOf, rangeText } from './tool-words.js';
import { TOOLS_KEPT } from './tools-page.js';
import { UseTable } from './use-table.js';

function Identity({ tool }: { readonly tool: ToolView }) {
  const { status, word } = lookOf(tool);
  const calibration =
    tool.dueOn === null
      ? word
      : `${word}, ${tool.status === 'out-of-date' ? 'was good' : 'good'} through ${dueText(tool)}`;
  const facts: readonly Fact[] = [
    ['Calibration', <StatusMark key="calibration" status={status} word={calibration} />],
    ['What it is', tool.description],
    ['Kind', kindWord(tool.kind)],
    ['Range', rangeText(tool)],
    ['Largest deviation', deviationText(tool)],
  ];
  return <FactList facts={facts} />;
}

/** What the status means for work, in a sentence. */
function Consequence({ tool }: { readonly tool: ToolView }) {
  const { status, kind, rangeLow } = tool;
  if (status === 'out-of-date' || status === 'never')
    return <p>No reading taken with it is accepted today. Record its calibration, or use another tool.</p>;
  if (kind === 'torque-wrench' && rangeLow === null)
    return <p>No torque taken with it is accepted: its range is not recorded.</p>;
  return null;
}

/** One tool: what it is, its calibrations, and where it was used. */
export function ToolPage() {
  const { toolId } = useParams({ from: '/signed-in/tools/$toolId' });
  const tool = useQuery(toolQuery(toolId));
  const may = useMay('keep-tools');
  return (
    <RegisterFrame
      title="Tool"
      serial={tool.data?.serialNumber}
      kept={TOOLS_KEPT}
      add={
        tool.data === undefined
          ? undefined
          : {
              word: 'Record a calibration',
              form: (close) => (
                <CalibrationForm
                  toolId={toolId}
                  onRecorded={(after) => {
                    announce(
                      `The calibration of ${after.serialNumber} was recorded: ${lookOf(after).word.toLowerCase()}.`,
                    );
                    close();
                  }}
                />
              ),
            }
      }
    >
      <Answered query={tool} doing="Reading the tool" lines={8}>
        {(data) => (
          <div className="stack">
            <Identity tool={data} />
            <Consequence tool={data} />
            <h2 className="section-heading">Calibrations</h2>
            <CalibrationTable calibrations={data.calibrations} may={may} />
            <h2 className="section-heading">Readings taken with it</h2>
            <UseTable uses={data.uses} inAll={data.usesInAll} />
          </div>
        )}
      </Answered>
    </RegisterFrame>
  );
}
