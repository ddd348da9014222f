import type { AnewPhrases } from '../matters/anew.ts'

export const enAnew: AnewPhrases = {
  being: [
    ...['are', 'is', 'should', 'be', 'need', 'needs', 'to', 'now', 'that', 'only', 'have', 'we', 'it'],
    ...['actually', "that's", 'a', 'up', 'down'],
  ],
  fillers: ['of', 'the', 'size', 'in'],
  not: ['not', 'no', "isn't", "aren't", "wasn't", 'isnt', 'wasnt', 'instead', 'rather'],
  notOf: ['of', 'than', 'the', 'like'],
  insteadLead: ['and'],
  told: ['it', 'make', 'that', 'want', 'need'],
  toldOf: ['of'],
  notFirst: ['not', 'no', "isn't", "aren't"],
  wasOf: ['the'],
  butNow: ['but', "it's", 'its', "they're", 'just', 'only'],
  from: ['from'],
  to: ['to'],
  ends: ['and', 'please', 'now'],
  more: ['more', 'extra', 'additional'],
  fewer: ['less', 'fewer'],
  another: ['another'],
  moreOf: ['a', 'to', 'of'],
  raising: ['add'],
  changing: [
    ...['make', 'change', 'instead', 'should', 'actually', 'really', 'now', 'only', 'meant', 'mean', 'sorry', 'oops', 'wait'],
    ...['just', 'recounted'],
  ],
  joining: ['joined', 'joining', 'signed', 'newcomers', 'newcomer'],
  adding: ['add', 'plus', 'also', 'too', 'another', 'besides', 'missed', 'forgot'],
  sentence: [
    ...['more', 'less', 'fewer', 'extra', 'not', 'instead', 'meant', 'wait', 'actually', 'oops', 'sorry', 'only', 'make'],
    ...['made'],
  ],
  inAll: ['in all', 'total', 'altogether', 'instead', 'only'],
  besides: ['besides', 'more', 'extra', 'as well', 'also', 'too', 'on top', 'add'],
}
