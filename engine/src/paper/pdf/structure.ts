import {
  hasRoles,
  resolve,
  type GroupMark,
  type Mark,
  type PaperFonts,
  type Placement,
  type RoleName,
} from '../drawing/index.ts';
import { drawPath, drawText, type Pdf } from './shapes.ts';

/** Structure types of PDF 1.7 (ISO 32000-1, 14.8.4). */
const tags: Readonly<Record<Exclude<RoleName, 'ornament'>, string>> = {
  heading1: 'H1',
  heading2: 'H2',
  heading3: 'H3',
  paragraph: 'P',
  list: 'L',
  listItem: 'LI',
  table: 'Table',
  row: 'TR',
  headerCell: 'TH',
  cell: 'TD',
  figure: 'Figure',
};

type Element = PDFKit.PDFStructureElement;

function placedIn(pdf: Pdf, by: Placement, draw: () => void): void {
  const { dx, dy, scale, angle } = by;
  pdf.save();
  pdf.transform(
    scale * Math.cos(angle),
    scale * Math.sin(angle),
    -scale * Math.sin(angle),
    scale * Math.cos(angle),
    dx,
    dy,
  );
  draw();
  pdf.restore();
}

/** Draws marks as they are, whatever they mean. */
function drawMarks(pdf: Pdf, marks: readonly Mark[], fonts: PaperFonts): void {
  for (const mark of marks.flatMap(resolve))
    if (mark.kind === 'path') drawPath(pdf, mark);
    else if (mark.kind === 'text') drawText(pdf, mark, fonts);
    else
      placedIn(pdf, mark.placement, () => {
        drawMarks(pdf, mark.marks, fonts);
      });
}

function content(pdf: Pdf, parent: Element, tag: string, options: object, draw: () => void): void {
  const element = pdf.struct(tag, options);
  parent.add(element);
  element.add(pdf.markStructureContent(tag));
  draw();
  pdf.endMarkedContent();
  element.end();
}

function drawRole(
  pdf: Pdf,
  parent: Element,
  mark: GroupMark,
  role: Exclude<RoleName, 'ornament'>,
  fonts: PaperFonts,
): void {
  const tag = tags[role];
  const options = {
    ...(mark.alt === '' ? {} : { alt: mark.alt }),
    ...(role === 'headerCell' ? { scope: 'Column' } : {}),
  };
  const inside = () => {
    drawMarks(pdf, mark.marks, fonts);
  };
  if (role === 'figure' || (!hasRoles(mark.marks) && role !== 'listItem')) {
    content(pdf, parent, tag, options, inside);
    return;
  }
  const element = pdf.struct(tag, options);
  parent.add(element);
  if (role === 'listItem') content(pdf, element, 'LBody', {}, inside);
  else drawTagged(pdf, element, mark.marks, fonts);
  element.end();
}

/** Draws marks and tells what each is; what has no role is an artifact, which speech and search pass over. */
export function drawTagged(pdf: Pdf, parent: Element, marks: readonly Mark[], fonts: PaperFonts): void {
  for (const mark of marks)
    if (mark.kind === 'group' && mark.role !== null && mark.role !== 'ornament') {
      const { role } = mark;
      placedIn(pdf, mark.placement, () => {
        drawRole(pdf, parent, mark, role, fonts);
      });
    } else if (mark.kind === 'group' && mark.role === null && hasRoles(mark.marks))
      placedIn(pdf, mark.placement, () => {
        drawTagged(pdf, parent, mark.marks, fonts);
      });
    else {
      const edge = mark.kind === 'group' && mark.role === 'ornament';
      pdf.markContent('Artifact', { type: edge ? 'Pagination' : 'Layout' });
      drawMarks(pdf, [mark], fonts);
      pdf.endMarkedContent();
    }
}

/** A page that is one picture. */
export function drawPicture(
  pdf: Pdf,
  parent: Element,
  alt: string,
  marks: readonly Mark[],
  fonts: PaperFonts,
): void {
  content(pdf, parent, tags.figure, { alt }, () => {
    drawMarks(pdf, marks, fonts);
  });
}
