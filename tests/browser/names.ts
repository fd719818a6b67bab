import type { Page } from 'playwright-core';

interface Node {
  nodeId: string;
  parentId?: string;
  ignored: boolean;
  role?: { value: string };
  name?: { value?: string };
  properties?: { name: string; value: { value?: unknown } }[];
}

const CONTROLS = new Set(
  `button link textbox searchbox combobox checkbox radio slider spinbutton listbox
  DisclosureTriangle ComboBoxSelect DateTime`.split(/\s+/),
);
const AROUND = new Set(
  'group region radiogroup navigation form article dialog listitem cell row'.split(' '),
);
const TEXT = new Set([
  'paragraph',
  'listitem',
  'cell',
  'definition',
  'heading',
  'figure',
  'status',
]);

/**
 * What is wrong with the page as a screen reader is given it: controls without a name; different controls
 * of one name with nothing around them that tells which is which; announcements that interrupt.
 */
export async function nameFaults(page: Page): Promise<string[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as {
    nodes: Node[];
  };
  await session.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const inside = new Map<string, string[]>();
  for (const node of nodes) {
    if (node.role?.value !== 'StaticText') continue;
    for (let up = byId.get(node.parentId!); up; up = byId.get(up.parentId!)) {
      if (!TEXT.has(up.role?.value ?? '')) continue;
      const said = inside.get(up.nodeId) ?? [];
      said.push(node.name?.value ?? '');
      inside.set(up.nodeId, said);
    }
  }
  /** The named groups around a control, and the sentence or the cell it stands in. */
  const around = (node: Node) => {
    const found: string[] = [];
    for (let up = byId.get(node.parentId!); up; up = byId.get(up.parentId!)) {
      const role = up.role?.value ?? '';
      if (AROUND.has(role) && up.name?.value) found.push(up.name.value);
      if (TEXT.has(role)) found.push((inside.get(up.nodeId) ?? []).join(''));
    }
    return found.join(' | ');
  };
  const property = (node: Node, name: string) =>
    node.properties?.find((property) => property.name === name)?.value.value;
  const faults: string[] = [];
  const alike = new Map<string, Node[]>();
  for (const node of nodes) {
    if (node.ignored) continue;
    const role = node.role?.value ?? '';
    const live = property(node, 'live');
    if (live === 'assertive' && role !== 'alert') faults.push(`interrupts: ${role}`);
    if (!CONTROLS.has(role)) continue;
    const name = node.name?.value?.trim();
    if (!name) faults.push(`a ${role} without a name, in ${around(node).slice(0, 80)}`);
    const key = `${role} “${name}”`;
    alike.set(key, [...(alike.get(key) ?? []), node]);
  }
  for (const [key, same] of alike) {
    const leads = new Set(same.map((node) => property(node, 'url') ?? node.nodeId));
    const told = new Set(same.map(around));
    if (leads.size > told.size) faults.push(`${leads.size} different ones: ${key}`);
  }
  return faults;
}
