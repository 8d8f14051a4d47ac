package org.wickwise.notebook;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.ProblemsFound;

/**
 * How the letters of a table are kept in its file: UTF-8 where every byte fits it, else Windows-1252 where every byte is a
 * letter there. A file that is neither is refused, and so is one that is no text.
 *
 * @param marked whether the file begins with the mark that some programs put before UTF-8
 */
record SheetLetters(Path file, Charset charset, boolean marked) {

    private static final long MOST_BYTES = 100_000_000;
    private static final int PIECE = 1 << 16;
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    /** Bytes that Windows-1252 gives no letter. */
    private static final Set<Integer> NO_LETTER = Set.of(0x81, 0x8D, 0x8F, 0x90, 0x9D);

    private static final List<byte[]> WORKBOOKS =
            List.of(new byte[] {'P', 'K', 3, 4}, new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0});
    private static final List<byte[]> SIXTEEN_BITS =
            List.of(new byte[] {(byte) 0xFF, (byte) 0xFE}, new byte[] {(byte) 0xFE, (byte) 0xFF});
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    /** @throws ProblemsFound where the file cannot be read, is too large, or is no text of either kind */
    static SheetLetters of(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw refused(
                        file,
                        "the table has " + Files.size(file) / 1_000_000 + " MB",
                        "at most " + MOST_BYTES / 1_000_000 + " MB",
                        "split it, one sheet for some of the groups");
            }
            byte[] first = firstBytes(file);
            if (WORKBOOKS.stream().anyMatch(begin -> begins(first, begin))) {
                throw refused(
                        file,
                        "this is the workbook of a spreadsheet program",
                        "a table as text (CSV)",
                        "open it there and save the sheet as CSV, UTF-8 if it asks");
            }
            if (SIXTEEN_BITS.stream().anyMatch(begin -> begins(first, begin))) {
                throw refused(
                        file, "the text is UTF-16", "UTF-8 or Windows-1252", "save the sheet again as CSV in UTF-8");
            }
            return new SheetLetters(file, charset(file), begins(first, MARK));
        } catch (IOException e) {
            throw refused(
                    file, "the table cannot be read", "a file of this computer", "check its name and who may read it");
        }
    }

    /** The letters, without the mark. */
    BufferedReader open() throws IOException {
        BufferedReader reader = new BufferedReader(new InputStreamReader(Files.newInputStream(file), charset), PIECE);
        if (marked) {
            reader.read();
        }
        return reader;
    }

    /** "UTF-8". */
    String inWords() {
        return charset.equals(WINDOWS)
                ? "Windows-1252, since some bytes are no UTF-8"
                : "UTF-8" + (marked ? ", with a mark in front" : "");
    }

    private static Charset charset(Path file) throws IOException {
        int noText = 0;
        boolean fitsWindows = true;
        boolean fitsUtf8 = true;
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(PIECE);
        CharBuffer letters = CharBuffer.allocate(PIECE);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
            while (read >= 0) {
                for (int i = bytes.position(); i < bytes.position() + read; i++) {
                    int value = bytes.array()[i] & 0xFF;
                    noText += value == 0 ? 1 : 0;
                    fitsWindows &= !NO_LETTER.contains(value);
                }
                if (fitsUtf8) {
                    bytes.position(bytes.position() + read).flip();
                    fitsUtf8 = !decoder.decode(bytes, letters, false).isError();
                    letters.clear();
                    bytes.compact();
                } else {
                    bytes.clear();
                }
                read = in.read(bytes.array(), bytes.position(), bytes.remaining());
            }
            bytes.flip();
            CoderResult end = fitsUtf8 ? decoder.decode(bytes, letters, true) : CoderResult.UNDERFLOW;
            fitsUtf8 &= !end.isError();
        }
        if (noText > 0 || !fitsUtf8 && !fitsWindows) {
            throw refused(
                    file,
                    noText > 0
                            ? "the file holds bytes that are no text"
                            : "the letters are neither UTF-8 nor Windows-1252",
                    "a table as text, in UTF-8 or Windows-1252",
                    "save the sheet again as CSV in UTF-8");
        }
        return fitsUtf8 ? StandardCharsets.UTF_8 : WINDOWS;
    }

    private static byte[] firstBytes(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(4);
        }
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length >= with.length
                && ByteBuffer.wrap(bytes, 0, with.length).equals(ByteBuffer.wrap(with));
    }

    private static ProblemsFound refused(Path file, String found, String expected, String wayOut) {
        return new ProblemsFound(List.of(new Problem(Place.wholeFile(file.toString()), found, expected, wayOut)));
    }
}
