import regularAddress from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url';
import boldAddress from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url';
import {
  classCards,
  classLayPaper,
  fromAll,
  howMany,
  laidClass,
  makePaper,
  openFont,
  parseClass,
  parseRequest,
  planClass,
  planLaid,
  speakerOver,
  usualMark,
  withLays,
  writePdf,
  type Mm,
  type OpenFont,
  type PaperDocument,
  type PaperFonts,
  type PaperInput,
  type PaperName,
  type RequestError,
  type Speaker,
} from '@ribbonwright/engine';
import type { Order, PaperFile, Told } from './order.ts';

const tell = (told: Told, transfer: Transferable[] = []): void => {
  postMessage(told, { transfer });
};

/** The page's own typeface, from the page's own address: kept with it, so that it is there without a network. */
async function fontAt(address: string): Promise<OpenFont> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${String(answer.status)} ${address}`);
  return openFont(new Uint8Array(await answer.arrayBuffer()));
}

/** Makes one paper by its name. */
type Maker = (name: PaperName) => PaperDocument;

async function make(order: Order): Promise<PaperFile[]> {
  const { names } = order;
  const [regular, bold] = await Promise.all([fontAt(regularAddress), fontAt(boldAddress)]);
  const fonts = { regular, bold };
  const paperOf = order.what === 'class' ? classMaker(order, fonts) : skirtMaker(order, fonts);
  const files: PaperFile[] = [];
  for (const name of names) {
    tell({ kind: 'progress', progress: { made: files.length, of: names.length, name } });
    const bytes = await writePdf(paperOf(name), fonts);
    files.push({ name, bytes: new Uint8Array(bytes) });
  }
  return files;
}

function skirtMaker(order: Order, fonts: PaperFonts): Maker {
  const { lays } = order;
  const parsed = parseRequest(order.document);
  if (!parsed.ok) throw refused(parsed.errors, order);
  const { request } = parsed;
  const plan = planLaid(request, lays);
  const input: PaperInput = {
    plan,
    laid: laidClass(plan, lays),
    speaker: speakerOf(order, request.mark),
    fonts,
    date: dateOf(order),
    // As the command line has it: what can be made of the cloth that there is.
    fromCloth: fromAll(request),
  };
  return (name) => makePaper(name, input).document;
}

function classMaker(order: Order, fonts: PaperFonts): Maker {
  const parsed = parseClass(order.document);
  if (!parsed.ok) throw refused(parsed.errors, order);
  const plan = withLays(planClass(parsed.request), order.lays);
  const input = {
    plan,
    shelf: order.shelf ?? howMany(parsed.request, null),
    speaker: speakerOf(order, parsed.request.mark),
    fonts,
    date: dateOf(order),
  };
  return (name) => (name === 'card' ? classCards(input) : classLayPaper(input));
}

const speakerOf = ({ words, language, measure }: Order, mark: Mm): Speaker =>
  speakerOver(words, { language, measure, mark });

const dateOf = ({ date }: Order): Date | null => (date === null ? null : new Date(`${date}T00:00:00Z`));

const refused = (errors: readonly RequestError[], order: Order): Error =>
  new Error(errors.map(speakerOf(order, usualMark(order.measure)).error).join('\n'));

addEventListener('message', ({ data }: MessageEvent<Order>) => {
  make(data).then(
    (files) => {
      tell(
        { kind: 'done', files },
        files.map(({ bytes }) => bytes.buffer),
      );
    },
    (error: unknown) => {
      tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
    },
  );
});
