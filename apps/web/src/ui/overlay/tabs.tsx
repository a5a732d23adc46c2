import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs as TabsRoot } from 'react-aria-components/Tabs';
import './overlay.css';

export interface TabPart {
  readonly id: string;
  readonly title: string;
  /** How many are inside, shown beside the title. */
  readonly count?: number | undefined;
  readonly content: ReactNode;
}

interface TabsProps {
  readonly label: string;
  readonly parts: readonly TabPart[];
  readonly selected: string;
  /** The choice belongs in the page's address. */
  readonly onSelect: (id: string) => void;
}

/** Several views of one thing, one at a time. */
export function Tabs({ label, parts, selected, onSelect }: TabsProps) {
  return (
    <TabsRoot className="tabs" selectedKey={selected} onSelectionChange={(key) => onSelect(String(key))}>
      <TabList className="tab-list" aria-label={label}>
        {parts.map(({ id, title, count }) => (
          <Tab key={id} id={id} className="tab">
            {title}
            {count !== undefined && <span className="tab-count">{count}</span>}
          </Tab>
        ))}
      </TabList>
      {parts.map(({ id, content }) => (
        <TabPanel key={id} id={id}>
          {content}
        </TabPanel>
      ))}
    </TabsRoot>
  );
}
