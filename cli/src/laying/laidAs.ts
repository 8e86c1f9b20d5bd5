import type { ClassRequest, LayKind } from '@ribbonwright/engine';

/**
 * Every cloth of a class asks for one way to lay it, whether it has a name there or is described with its skirt; null
 * leaves it to them. A lining is laid as it takes least.
 */
export function laidAs(request: ClassRequest, lay: LayKind | null): ClassRequest {
  if (lay === null) return request;
  return {
    ...request,
    cloths: request.cloths.map((cloth) => ({ ...cloth, options: { ...cloth.options, lay } })),
    skirts: request.skirts.map((skirt) => ({
      ...skirt,
      request: {
        ...skirt.request,
        contrast: skirt.request.contrast.map((each) => ({ ...each, cloth: { ...each.cloth, lay } })),
      },
    })),
  };
}
