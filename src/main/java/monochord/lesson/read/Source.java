package monochord.lesson.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.text.SafeText;

/** A file as safe lines. Says what had to be taken out, and refuses what is not a text or too large. */
public final class Source {
    /** A long lesson has 10 KB; at this size the worst a file can do to the Markdown parser still ends within a second. */
    public static final int MOST_BYTES = 256 * 1024;

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Faults faults;
    private final int most;

    Source(Faults faults) {
        this(faults, MOST_BYTES);
    }

    /** @param most how many bytes are read; a file with more is refused */
    public Source(Faults faults, int most) {
        this.faults = faults;
        this.most = most;
    }

    Optional<List<SourceLine>> lines(Path file) {
        return bytes(file).map(this::decoded).flatMap(this::lines);
    }

    /** What the file holds, if it is a file, can be read and is not too large. */
    public Optional<byte[]> bytes(Path file) {
        if (!Files.isRegularFile(file)) {
            return refuse(
                    Phrase.of(Files.exists(file) ? "this is not a file" : "there is no such file"),
                    Phrase.of("name a Markdown file"));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            return bytes.length > most ? tooLarge() : Optional.of(bytes);
        } catch (IOException e) {
            return refuse(
                    Phrase.of("the file cannot be read: {0}", Phrase.typed(String.valueOf(e.getMessage()))),
                    Phrase.of("look at its permissions"));
        }
    }

    /** Safe lines of a text. */
    public Optional<List<SourceLine>> lines(String text) {
        if (text.length() > most) {
            return tooLarge();
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        String[] lines = LINE_END.split(marked ? text.substring(1) : text, -1);
        return Optional.of(IntStream.range(0, lines.length)
                .mapToObj(i -> safe(new SourceLine(i + 1, lines[i])))
                .toList());
    }

    private <T> Optional<T> tooLarge() {
        return refuse(Phrase.of("the file is larger than {0} KB", most / 1024), Phrase.of("split it into several"));
    }

    private <T> Optional<T> refuse(Phrase what, Phrase instead) {
        faults.at(1, 1, what, instead);
        return Optional.empty();
    }

    private SourceLine safe(SourceLine line) {
        String clean = SafeText.clean(line.text());
        if (clean.equals(line.text())) {
            return line;
        }
        unsafe(line);
        return new SourceLine(line.number(), clean);
    }

    /** Names the first unsafe character of the line. */
    private void unsafe(SourceLine line) {
        int[] characters = line.text().codePoints().toArray();
        int place = 0;
        while (SafeText.isSafe(characters[place])) {
            place++;
        }
        Phrase code = Phrase.typed("U+%04X".formatted(characters[place]));
        Phrase what = Phrase.of("the control character {0}", code);
        faults.at(line.number(), place + 1, what, Phrase.of("leave it out"));
    }

    /** The text that the bytes hold in UTF-8; where they hold none, a fault says from where on. */
    public String decoded(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (!result.isError()) {
            return out.flip().toString();
        }
        notUtf8(out.flip().toString());
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private void notUtf8(String before) {
        List<String> lines = new ArrayList<>(List.of(LINE_END.split(before, -1)));
        SourceLine last = new SourceLine(lines.size(), lines.get(lines.size() - 1));
        faults.at(
                last.number(),
                last.column(last.text().length()),
                Phrase.of("from here on the file is not in UTF-8"),
                Phrase.of("save it in the encoding UTF-8"));
    }
}
