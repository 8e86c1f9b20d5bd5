import type { ClassRequest, LayKind } from '@ribbonwright/engine';

/** Every cloth of a class asks for one way to lay it, the one that it has where it names none too; null leaves it to them. */
export const laidAs = (request: ClassRequest, lay: LayKind | null): ClassRequest =>
  lay === null
    ? request
    : {
        ...request,
        cloths: request.cloths.map((cloth) => ({ ...cloth, options: { ...cloth.options, lay } })),
      };
