import { unzipSync } from "fflate";
import { FileProblem } from "./file-problem";

/** The parts of a zipped workbook by their path, in the order of the file. */
export type Package = Record<string, Uint8Array>;

const megabyte = 1024 * 1024;
/** A log of ten years with an hourly reading is about 5 MB; what is far beyond that would stall the machine. */
export const limits = {
  packedBytes: 50 * megabyte,
  unpackedBytes: 300 * megabyte,
  /** Sheets shrink 5 to 30 times; only a trap shrinks more than this, and only large contents are a trap. */
  shrinkage: 200,
  shrinkageCountsFrom: 20 * megabyte,
  tooLarge: "it is larger than 50 MB, far more than any log: it is not opened",
  tooLargeInside: "its contents are larger than 300 MB, or packed more than 200 times: it is not opened",
} as const;

/** The first bytes of the container that holds encrypted workbooks and those of the old binary format. */
const compoundFile = [0xd0, 0xcf, 0x11, 0xe0];
const zipFile = [0x50, 0x4b];

/** Unpacks an .xlsx, or says in one line why it will not. */
export function openPackage(bytes: Uint8Array): Package {
  if (bytes.length === 0) throw new FileProblem("it is empty");
  if (startsWith(bytes, compoundFile)) {
    throw new FileProblem("it is encrypted, or in the old .xls format: save it as .xlsx without a password, then try again");
  }
  if (!startsWith(bytes, zipFile)) throw new FileProblem("it is not an .xlsx workbook");
  if (bytes.length > limits.packedBytes) throw new FileProblem(limits.tooLarge);
  const parts = unpacked(bytes);
  if (parts["xl/workbook.bin"] !== undefined) throw new FileProblem("it is in the .xlsb format: save it as .xlsx, then try again");
  if (parts["[Content_Types].xml"] === undefined || parts["_rels/.rels"] === undefined) {
    throw new FileProblem("it is a zip file, but not an .xlsx workbook");
  }
  return parts;
}

function unpacked(bytes: Uint8Array): Package {
  let total = 0;
  try {
    return unzipSync(bytes, {
      filter: ({ originalSize }) => {
        total += originalSize;
        const isTrap = total > limits.shrinkageCountsFrom && total > bytes.length * limits.shrinkage;
        if (total > limits.unpackedBytes || isTrap) throw new FileProblem(limits.tooLargeInside);
        return true;
      },
    });
  } catch (problem) {
    if (problem instanceof FileProblem) throw problem;
    throw new FileProblem("it is damaged: its zip container cannot be read");
  }
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, n) => bytes[n] === byte);
}
