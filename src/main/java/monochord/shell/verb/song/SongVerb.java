package monochord.shell.verb.song;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.notebook.AttachedFile;
import monochord.score.SongScore;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SongDirections;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongReader;
import monochord.song.abc.AbcWriter;
import monochord.sound.Directions;
import monochord.sound.Markers;
import monochord.sound.Performance;
import monochord.sound.file.MidiFile;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.SongAnswer;

/** Opens a song, shows it, writes it into other files. */
final class SongVerb implements Verb {
    private static final String OUT = "out";
    private static final String ABC = "abc";
    private static final String MIDI = "midi";

    @Override
    public String word() {
        return "song";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of(
                                "open a song, also a tune in ABC, a sheet in MusicXML or chords over words, or begin one;"
                                        + " alone, show the one that is open"))
                .form(
                        may(takes(Value.FILE)),
                        may(clause(SongBook.TUNE, Value.NAME)),
                        may(option(OUT, Value.FILE)),
                        may(option(ABC, Value.FILE)),
                        may(option(MIDI, Value.FILE)),
                        may(option(NewFile.OVER)))
                .examples(
                        "song my-song.md", "song tunes.abc tune 2", "song --out other-song.md", "song --midi song.mid");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.body().isEmpty()) {
            Optional<Answer> other = open(sentence, sitting);
            if (other.isPresent()) {
                return other.get();
            }
        }
        Optional<Song> song = sitting.song().song();
        return song.isEmpty()
                ? none(sitting)
                : written(sentence, song.get(), sitting).orElseGet(() -> new SongAnswer(song.get()));
    }

    /** What is said where no song is open. */
    static Answer none(Sitting sitting) {
        return Statement.no(
                Phrase.sentence("No song is open.").then(sitting.song().offer(sitting)));
    }

    /** An answer where it cannot be opened, or is begun. */
    private static Optional<Answer> open(Sentence sentence, Sitting sitting) {
        String name = sentence.body().text();
        Path file = sentence.body().read(sitting.outside()::file);
        boolean isAsked =
                canBeAsked(sitting) && name.toLowerCase(java.util.Locale.ROOT).endsWith(".md");
        if (!Files.exists(file)) {
            Optional<Path> ours = sitting.course().library().tunes().find(name);
            if (ours.isPresent()) {
                return ours(ours.get(), name, sitting);
            } else if (isAsked) {
                return Optional.of(sitting.song().begin(file, name, Optional.empty(), sitting));
            } else if (name.toLowerCase(java.util.Locale.ROOT).endsWith(".md")) {
                return Optional.of(Statement.failed(Phrase.sentence(
                        "{0} is not there. At the prompt {1} begins a song in it; {2} says how one is written.",
                        Phrase.typed(name), Phrase.verb("song " + name), Phrase.verb("help song-file"))));
            }
        }
        try {
            Song song = opened(SongOpening.of(file, name, sentence), name, sitting);
            boolean isBegun = song.sections().isEmpty() && !song.head().title().isEmpty();
            return isAsked && isBegun
                    ? Optional.of(sitting.song().begin(file, name, Optional.of(song), sitting))
                    : Optional.empty();
        } catch (IOException failed) {
            return Optional.of(Statement.failed(sitting.outside().told(failed)));
        }
    }

    /** Whether somebody is there who answers: no script, whose next lines would be taken for answers. */
    private static boolean canBeAsked(Sitting sitting) {
        return sitting.isAttended() || sitting.outside().seal().isPresent();
    }

    private static Song opened(SongOpening opening, String name, Sitting sitting) {
        sitting.song().open(opening.song(), opening.file().orElse(null));
        if (!sitting.song().isNoted(name)) {
            sitting.journal().attach(AttachedFile.song(name, opening.text()));
        }
        sitting.song().holds(name, opening.text());
        sitting.song().remember(sitting);
        sitting.settle(opening.song().head().key());
        return opening.song();
    }

    /** A tune of the lessons: a change of it goes into a file of one's own, never into theirs. */
    private static Optional<Answer> ours(Path file, String name, Sitting sitting) {
        try {
            sitting.song().open(SongReader.read(SongFile.text(file, name)), null);
            sitting.settle(sitting.song().song().orElseThrow().head().key());
            return Optional.empty();
        } catch (IOException failed) {
            return Optional.of(Statement.failed(sitting.outside().told(failed)));
        }
    }

    /** An answer where something was to be written. */
    private static Optional<Answer> written(Sentence sentence, Song song, Sitting sitting) {
        List<NewFile> files = Stream.of(
                        NewFile.text(sentence, OUT, sitting, song::toString),
                        NewFile.text(sentence, ABC, sitting, () -> AbcWriter.write(song)),
                        NewFile.of(sentence, MIDI, sitting, part -> midi(song).into(part)))
                .flatMap(Optional::stream)
                .toList();
        if (files.isEmpty()) {
            return Optional.empty();
        }
        List<Phrase> said = files.stream()
                .map(file -> Phrase.sentence("Written: {0}.", Phrase.typed(file.name())))
                .toList();
        Answer answer = NewFile.writeNoted(files, sentence, sitting, new SongAnswer.SongStatement(said, song));
        if (answer.status() == Answer.DONE) {
            sentence.option(OUT).ifPresent(out -> {
                sitting.song().keepIn(out.read(sitting.outside()::file));
                sitting.song().holds(out.text(), song.toString());
                sitting.song().remember(sitting);
            });
        }
        return Optional.of(answer);
    }

    private static monochord.file.WholeFile.Content midi(Song song) {
        SongScore music = SongScore.of(song.music().played(), song.head().metre());
        Performance performance = SongDirections.of(song.head(), Directions.USUAL)
                .perform(music.piece(), song.head().key());
        return MidiFile.of(Markers.add(performance.sequence(), music.sections()));
    }
}
