package monochord.song;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import monochord.text.Failure;
import monochord.text.Phrase;

/** The text of a song's file, at most 4 MB of it. */
public final class SongFile {
    private static final int MOST_BYTES = 4 << 20;
    private static final Pattern HEAD = Pattern.compile("(?s)\\A---\\s*\\n((?:[^#\\n-][^\\n]*\\n|\\n){0,40})");
    private static final Pattern KEY = Pattern.compile("(?m)^(?:key|metre|tempo):");
    private static final Pattern LESSON = Pattern.compile("(?m)^(?:grade|needs|skills|seed):");
    private static final Pattern BLOCK = Pattern.compile("(?m)^```(?:chords|tune|words)\\s*$");

    private SongFile() {}

    /**
     * In UTF-8, or in Latin-1 as old files are.
     *
     * @throws IOException with the message {@code path: what is wrong}
     */
    public static String text(Path file, String name) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new Failure(
                    name,
                    Files.isDirectory(file)
                            ? Phrase.of("is a folder, not a file")
                            : Phrase.of("there is no such file"));
        }
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            throw new Failure(name, Phrase.of("it is longer than 4 MB, which no song is"));
        }
        return decoded(bytes);
    }

    private static String decoded(byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException old) {
            text = new String(bytes, StandardCharsets.ISO_8859_1);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** Whether a Markdown text is meant as a song, not as a lesson or a notebook. */
    public static boolean isSong(String text) {
        var head = HEAD.matcher(text.replace("\r\n", "\n"));
        boolean headed = head.find()
                && KEY.matcher(head.group(1)).find()
                && !LESSON.matcher(head.group(1)).find();
        return headed || !head.reset().find() && BLOCK.matcher(text).find();
    }
}
