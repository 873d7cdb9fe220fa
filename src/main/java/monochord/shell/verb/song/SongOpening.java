package monochord.shell.verb.song;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.key.LikelyKey;
import monochord.shell.sentence.Sentence;
import monochord.shell.verb.music.Counts;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongReader;
import monochord.song.musicxml.LeadSheetFile;
import monochord.song.text.TextChart;
import monochord.text.Failure;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * Reads a song from whatever file it stands in: our Markdown, ABC, MusicXML plain or packed, chords over words.
 *
 * @param file in which changes are kept; none for a song that came from another format
 * @param text of the file
 */
record SongOpening(Song song, Optional<Path> file, String text) {
    private static final int LOOKED_AT = 400;

    /**
     * @param name as it was typed
     * @throws IOException with a message of one line
     */
    static SongOpening of(Path file, String name, Sentence sentence) throws IOException {
        if (isSheet(file)) {
            return new SongOpening(
                    inItsKey(LeadSheetFile.song(file, name)), Optional.empty(), LeadSheetFile.text(file, name));
        }
        String text = SongFile.text(file, name);
        boolean isMarkdown = name.toLowerCase(Locale.ROOT).endsWith(".md") || SongFile.isSong(text);
        if (!isMarkdown && isAbc(name, text)) {
            return new SongOpening(SongBook.read(text, sentence), Optional.empty(), SongBook.kept(text, sentence));
        } else if (!isMarkdown && TextChart.isChart(text)) {
            return new SongOpening(chart(TextChart.read(text, called(file))), Optional.empty(), text);
        } else if (!isMarkdown) {
            throw new Failure(
                    name,
                    Phrase.of(
                            "it is no song: it is read from Markdown, ABC, MusicXML, or a text with chords over words"));
        }
        return new SongOpening(SongReader.read(text), Optional.of(file), text);
    }

    private static boolean isAbc(String name, String text) {
        return name.toLowerCase(Locale.ROOT).endsWith(".abc")
                || text.startsWith("X:")
                || text.startsWith("%abc")
                || text.contains("\nX:") && text.contains("\nK:");
    }

    /** By its ending, or by how it begins: as a packed file or as XML. */
    private static boolean isSheet(Path file) throws IOException {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.matches(".*\\.(?:musicxml|mxl|xml)")) {
            return true;
        }
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (var in = Files.newInputStream(file)) {
            String begin = new String(in.readNBytes(LOOKED_AT), java.nio.charset.StandardCharsets.ISO_8859_1);
            return begin.startsWith("PK") || begin.contains("<?xml") || begin.contains("<score-partwise");
        }
    }

    private static String called(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.replaceFirst("\\.[^.]{1,5}$", "").replace('-', ' ').replace('_', ' ');
    }

    /** A sheet says its signature; whether that is major or minor its chords say better than its file. */
    private static Song inItsKey(Song song) {
        Key said = song.head().key();
        Optional<Key> found = likely(song)
                .flatMap(keys -> keys.keys().stream()
                        .map(LikelyKey::key)
                        .filter(key -> key.signature() == said.signature())
                        .findFirst());
        return found.filter(key -> !key.equals(said))
                .map(key -> song.with(song.head().in(key))
                        .remarked(Phrase.sentence("The file says {0}; by its notes it is in {1}.", said, key)))
                .orElse(song);
    }

    private static Song chart(TextChart.Read read) {
        Song song = read.song();
        return read.isKeySaid()
                ? song
                : likely(song)
                        .map(keys -> song.with(song.head().in(keys.keys().get(0).key()))
                                .remarked(Phrase.sentence(
                                        "No key is written; by its chords it is in {0}.",
                                        keys.keys().get(0).key())))
                        .orElse(song);
    }

    private static Optional<KeyFinding> likely(Song song) {
        return song.chords().isEmpty() && song.tune().isEmpty()
                ? Optional.empty()
                : Optional.of(KeyFinding.of(song.tune(), song.chords(), Counts.KEYS));
    }
}
