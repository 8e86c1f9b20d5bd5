export { LARGEST_REQUEST, parseRequest, parseRequestText, type ParsedRequest } from './parse.ts';
export {
  languages,
  paperSizes,
  REQUEST_VERSION,
  type Language,
  type PaperSize,
  type SkirtRequest,
} from './request.ts';
export { requestJsonSchema } from './schema.ts';
export type { RequestError, RequestErrorCode } from './errors.ts';
