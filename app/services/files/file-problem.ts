/**
 * What went wrong with a file, as one sentence for the person. Errors that are no file's are thrown on: they are ours.
 */
import { basename } from 'node:path';
import { type Problem, problem } from '../../../shared/result.ts';
import { errorCode } from './error-code.ts';

interface Reason {
  readonly code: string;
  readonly because: string;
  readonly todo: string;
}

const reasons: Record<string, Reason> = {
  ENOSPC: { code: 'disk-full', because: 'the disk is full', todo: 'Make room on it, then try again.' },
  EDQUOT: {
    code: 'disk-full',
    because: 'your share of the disk is used up',
    todo: 'Make room, then try again.',
  },
  EFBIG: { code: 'disk-full', because: 'the disk takes no file this large', todo: 'Choose another disk.' },
  EIO: {
    code: 'disk-fault',
    because: 'the disk reported an error',
    todo: 'Choose another disk, and have this one looked at.',
  },
  EACCES: {
    code: 'not-allowed',
    because: 'this account may not do that there',
    todo: 'Choose another folder, or change the permissions.',
  },
  EPERM: {
    code: 'not-allowed',
    because: 'the system does not allow it there',
    todo: 'Choose another folder, or change the permissions.',
  },
  EROFS: { code: 'read-only', because: 'the disk can only be read', todo: 'Choose another folder.' },
  ENOENT: {
    code: 'not-there',
    because: 'there is nothing of that name',
    todo: 'Check the name, look for where it was moved to, or choose another place.',
  },
  ENOTDIR: { code: 'not-there', because: 'there is no such folder', todo: 'Choose another folder.' },
  EISDIR: { code: 'not-a-file', because: 'it is a folder', todo: 'Choose a file.' },
  ENOTFILE: { code: 'not-a-file', because: 'it is not a plain file', todo: 'Choose a file.' },
  ELOOP: { code: 'not-a-file', because: 'its links lead in a circle', todo: 'Choose another file.' },
  EEXIST: { code: 'exists', because: 'there is a file of that name', todo: 'Choose another name.' },
  EBUSY: { code: 'busy', because: 'another program holds it', todo: 'Close it there, then try again.' },
  ETXTBSY: { code: 'busy', because: 'another program holds it', todo: 'Close it there, then try again.' },
  EMFILE: { code: 'busy', because: 'too many files are open', todo: 'Close other programs, then try again.' },
  ENFILE: { code: 'busy', because: 'too many files are open', todo: 'Close other programs, then try again.' },
  ERR_FS_FILE_TOO_LARGE: {
    code: 'too-large',
    because: 'it is larger than Larkrow can read',
    todo: 'Choose another file.',
  },
  EXDEV: {
    code: 'other-disk',
    because: 'it lies on another disk',
    todo: 'Choose a folder on the same disk.',
  },
  ENAMETOOLONG: { code: 'bad-name', because: 'its name is too long', todo: 'Choose a shorter name.' },
  EINVAL: { code: 'bad-name', because: 'the disk does not take this name', todo: 'Choose a simpler name.' },
};

/**
 * `done` says what was not done, in the past tense: 'was not saved'. `comfort` may add what is still safe.
 * Throws the error itself where no file operation is known to give it.
 */
export function fileProblem(error: unknown, path: string, done: string, comfort = ''): Problem {
  const reason = reasons[errorCode(error)];
  if (!reason) throw error;
  const safe = comfort ? ` ${comfort}` : '';
  return problem(reason.code, `“${basename(path)}” ${done}: ${reason.because}. ${reason.todo}${safe}`)
    .problem;
}
