import { strFromU8, unzipSync } from 'fflate';
import { limits } from './limits.ts';
import { tooMuch, Unreadable } from './unreadable.ts';

/** The parts of a zip archive that were asked for, unpacked. */
export type Archive = {
  /** Names of all parts, also of those not unpacked. */
  names: string[];
  /** The text of a part, or null where the archive has none of that name. */
  text(name: string): string | null;
};

/**
 * Opens a zip archive and unpacks the parts that `wanted` names. Sizes are checked before anything is unpacked,
 * and never more is written than the archive itself says of a part, so that a zip bomb costs neither time nor room.
 */
export function openArchive(fileName: string, bytes: Uint8Array, wanted: (name: string) => boolean): Archive {
  const names: string[] = [];
  let unpackedBytes = 0;
  let parts: Record<string, Uint8Array>;
  try {
    parts = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        names.push(name);
        if (names.length > limits.archiveParts) throw bomb(fileName);
        if (!wanted(name)) return false;
        unpackedBytes += originalSize;
        if (originalSize > limits.partBytes || unpackedBytes > limits.unpackedBytes) throw bomb(fileName);
        return true;
      },
    });
  } catch (error) {
    if (error instanceof Unreadable) throw error;
    throw damaged(fileName);
  }
  return {
    names,
    text: (name) => {
      const part = parts[name];
      return part ? strFromU8(part) : null;
    },
  };
}

export function damaged(fileName: string): Unreadable {
  return new Unreadable(
    `“${fileName}” is damaged or was cut off on its way: its parts cannot be unpacked.`,
    'Ask the band to send the file again, or to send the list as CSV or PDF.',
  );
}

function bomb(fileName: string): Unreadable {
  return tooMuch(`“${fileName}” unpacks to far more than any rider holds and was not opened.`);
}
