package monochord.shell.verb.song;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongReader;
import monochord.song.abc.AbcWriter;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.SongAnswer;

/** Opens a song, shows it, writes it into other files. */
final class SongVerb implements Verb {
    private static final String OUT = "out";
    private static final String ABC = "abc";
    private static final String OVER = "over";

    @Override
    public String word() {
        return "song";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("open a song and show it; alone, show the one that is open"))
                .form(
                        may(takes(Value.FILE)),
                        may(clause(SongBook.TUNE, Value.NAME)),
                        may(option(OUT, Value.FILE)),
                        may(option(ABC, Value.FILE)),
                        may(option(OVER)))
                .examples("song my-song.md", "song tunes.abc tune 2", "song --out other-song.md");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.body().isEmpty()) {
            Optional<Answer> failed = open(sentence, sitting);
            if (failed.isPresent()) {
                return failed.get();
            }
        }
        Optional<Song> song = sitting.song().song();
        if (song.isEmpty()) {
            return NONE;
        }
        return written(sentence, sitting).orElseGet(() -> new SongAnswer(song.get()));
    }

    static final Answer NONE =
            Statement.no(Phrase.sentence("No song is open. {0} opens one.", Phrase.verb("song my-song.md")));

    /** An answer where it cannot be opened. */
    private static Optional<Answer> open(Sentence sentence, Sitting sitting) {
        String name = sentence.body().text();
        Path file = sentence.body().read(sitting.outside()::file);
        Optional<Path> ours = Files.exists(file)
                ? Optional.empty()
                : sitting.course().library().tunes().find(name);
        try {
            if (ours.isPresent()) {
                // A change goes into a file of one's own, never into the tunes of the lessons.
                sitting.song().open(SongReader.read(SongFile.text(ours.get(), name)), null);
                sitting.settle(sitting.song().song().orElseThrow().head().key());
                return Optional.empty();
            }
            String text = SongFile.text(file, name);
            if (isAbc(name, text)) {
                Song song = SongBook.read(text, sentence);
                sitting.song().open(song, null);
            } else {
                sitting.song().open(SongReader.read(text), file);
            }
            Song song = sitting.song().song().orElseThrow();
            sitting.settle(song.head().key());
            return Optional.empty();
        } catch (IOException failed) {
            return Optional.of(Statement.failed(sitting.outside().told(failed)));
        }
    }

    private static boolean isAbc(String name, String text) {
        return name.toLowerCase(Locale.ROOT).endsWith(".abc") || text.startsWith("X:") || text.startsWith("%abc");
    }

    /** An answer where something was to be written. */
    private static Optional<Answer> written(Sentence sentence, Sitting sitting) {
        Song song = sitting.song().song().orElseThrow();
        List<Phrase> said = new ArrayList<>();
        Optional<Sentence.SentencePart> out = sentence.option(OUT);
        if (out.isPresent()) {
            String name = out.get().text();
            Path file = out.get().read(sitting.outside()::file);
            Optional<Answer> failed = SongKeeping.write(name, song.toString(), sentence.has(OVER), sitting);
            if (failed.isPresent()) {
                return failed;
            }
            sitting.song().keepIn(file);
            said.add(Phrase.sentence("Saved: {0}.", Phrase.typed(name)));
        }
        Optional<Sentence.SentencePart> abc = sentence.option(ABC);
        if (abc.isPresent()) {
            String name = abc.get().text();
            Optional<Answer> failed = SongKeeping.write(name, AbcWriter.write(song), sentence.has(OVER), sitting);
            if (failed.isPresent()) {
                return failed;
            }
            said.add(Phrase.sentence("Written as ABC: {0}.", Phrase.typed(name)));
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(new SongAnswer.SongStatement(said, song));
    }
}
