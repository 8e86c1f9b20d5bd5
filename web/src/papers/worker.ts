import regularAddress from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url';
import boldAddress from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url';
import {
  fromCloth,
  makePaper,
  openFont,
  parseRequest,
  planLaid,
  speakerOver,
  usualMark,
  writePdf,
  type OpenFont,
  type PaperInput,
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

async function make({ document, lays, language, words, measure, names, date }: Order): Promise<PaperFile[]> {
  const parsed = parseRequest(document);
  if (!parsed.ok) {
    const { error } = speakerOver(words, { language, measure, mark: usualMark(measure) });
    throw new Error(parsed.errors.map(error).join('\n'));
  }
  const { request } = parsed;
  const { have } = request.cloth;
  const [regular, bold] = await Promise.all([fontAt(regularAddress), fontAt(boldAddress)]);
  const input: PaperInput = {
    plan: planLaid(request, lays),
    speaker: speakerOver(words, { language, measure, mark: request.mark }),
    fonts: { regular, bold },
    date: date === null ? null : new Date(`${date}T00:00:00Z`),
    // As the command line has it: what can be made of the cloth that there is.
    fromCloth: have === undefined ? null : fromCloth(request, have),
  };
  const files: PaperFile[] = [];
  for (const name of names) {
    tell({ kind: 'progress', progress: { made: files.length, of: names.length, name } });
    const bytes = await writePdf(makePaper(name, input).document, input.fonts);
    files.push({ name, bytes: new Uint8Array(bytes) });
  }
  return files;
}

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
