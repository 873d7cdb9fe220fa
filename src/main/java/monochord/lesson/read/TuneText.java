package monochord.lesson.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.lesson.LessonPart;
import monochord.lesson.Trouble;
import monochord.lesson.TuneExcerpt;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongHead;
import monochord.song.SongPlace;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;

/**
 * Reads the block that names bars of a tune: {@code oh-susanna verse bars 1 to 4}, and with other chords {@code twinkle
 * verse bars 1 to 2 over I | IV}.
 *
 * <p>A tune whose own file has faults is left out without a fault of the lesson, for another hand may have written it, and a
 * lesson with faults stays shut.
 */
final class TuneText {
    private static final Pattern LINE = Pattern.compile("\\s*(\\S+)\\s*(.*?)(?:\\s+over\\s+(\\S.*?))?\\s*");

    private final Tunes tunes;
    private final Faults faults;

    TuneText(Tunes tunes, Faults faults) {
        this.tunes = tunes;
        this.faults = faults;
    }

    /** @param lines those that are not blank, at least one */
    Optional<LessonPart> read(int fence, List<SourceLine> lines) {
        if (lines.size() > 1) {
            faults.at(
                    lines.get(1).number(),
                    1,
                    Phrase.of("line {0} in a {1} block", 2, Phrase.typed("tune")),
                    Phrase.of("write it in a block of its own"));
        }
        SourceLine line = lines.get(0);
        Matcher said = LINE.matcher(line.text());
        if (!said.matches()) {
            return Optional.empty();
        }
        Optional<Path> file = tunes.find(said.group(1));
        if (file.isEmpty()) {
            faults.in(line, 0, noTune(said));
            return Optional.empty();
        }
        return song(file.get())
                .flatMap(song -> excerpt(song, said, line))
                .map(tune -> new LessonPart.TunePart(fence, tune));
    }

    private Trouble noTune(Matcher said) {
        Phrase instead = Nearest.to(said.group(1), tunes.names())
                .map(name -> Phrase.of("write {0}", Phrase.typed(name)))
                .orElse(Phrase.of(
                        "write the name of a file in the folder {0} beside the books", Phrase.typed("tunes")));
        return new Trouble(
                said.start(1), Phrase.of("no tune is called \"{0}\"", Phrase.quoted(said.group(1))), instead);
    }

    /** None where the file has a fault; {@code check} tells it. */
    private Optional<Song> song(Path file) {
        try {
            return Optional.of(tunes.song(file)).filter(read -> read.faults().isEmpty());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private Optional<TuneExcerpt> excerpt(Song song, Matcher said, SourceLine line) {
        try {
            Optional<SongPlace.Found> found = place(said.group(2), song);
            if (found.isEmpty() || found.get().end() < said.group(2).length()) {
                faults.in(line, 0, noPlace(song, said));
                return Optional.empty();
            }
            Optional<TuneExcerpt> tune = excerpt(song, found.get().place());
            if (tune.isEmpty()) {
                faults.in(line, 0, noMusic(said));
            }
            return said.group(3) == null ? tune : tune.flatMap(plain -> over(plain, said, line));
        } catch (Unreadable unreadable) {
            faults.in(line, said.start(2), Trouble.of(unreadable));
            return Optional.empty();
        }
    }

    /** The first section where none is named. */
    private static Optional<SongPlace.Found> place(String text, Song song) {
        return text.isEmpty()
                ? song.sections().stream()
                        .findFirst()
                        .flatMap(section -> SongPlace.find(section.name(), song))
                        .map(found -> new SongPlace.Found(found.place(), 0))
                : SongPlace.find(text, song);
    }

    private static Trouble noPlace(Song song, Matcher said) {
        Phrase sections = Phrase.either(song.sections().stream()
                .filter(section -> !section.isAgain())
                .map(section -> Phrase.typed(section.name()))
                .toList());
        return new Trouble(
                said.start(2),
                Phrase.of("no place in the tune is called \"{0}\"", Phrase.quoted(said.group(2))),
                Phrase.of("write {0}, and bars behind it if need be", sections));
    }

    private static Trouble noMusic(Matcher said) {
        return new Trouble(
                said.start(2),
                Phrase.of("tune or chords are not written there"),
                Phrase.of("write both into its file, or name another place"));
    }

    private static Optional<TuneExcerpt> excerpt(Song song, SongPlace place) {
        SectionMusic music = place.music(song);
        Optional<Melody> melody =
                music.melody(place.first(), place.last(), song.head().metre());
        Optional<Progression> chords = music.progression(place.first(), place.last());
        if (melody.isEmpty() || chords.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TuneExcerpt(
                song.head().title(),
                place.phrase(),
                song.head().key(),
                quarters(song.head()),
                melody.get(),
                chords.get(),
                words(song, place, music, melody.get())));
    }

    /** A minute, where the file may count dotted ones. */
    private static int quarters(SongHead head) {
        return head.metre().isCompound() ? head.tempo() * 3 / 2 : head.tempo();
    }

    private static List<String> words(Song song, SongPlace place, SectionMusic music, Melody melody) {
        List<String> lines = place.section().words();
        if (lines.stream().allMatch(String::isBlank)) {
            return List.of();
        }
        int before = place.first() == 0
                ? 0
                : music.melody(0, place.first() - 1, song.head().metre())
                        .map(ahead -> ahead.notes().size())
                        .orElse(0);
        int pickup = music.bars().size() - music.count();
        boolean held =
                place.first() > 0 && music.bars().get(place.first() + pickup).beginsHeld();
        int sung = melody.notes().size() - (held ? 1 : 0);
        List<String> syllables = Syllables.of(lines, before + sung).subList(before, before + sung);
        return held ? Stream.concat(Stream.of(""), syllables.stream()).toList() : syllables;
    }

    /** The same bars over other chords, as many bars of them. */
    private Optional<TuneExcerpt> over(TuneExcerpt plain, Matcher said, SourceLine line) {
        try {
            Progression chords = Progression.parse(said.group(3), plain.key());
            int bars = plain.chords().bars().size();
            if (chords.bars().size() != bars || !chords.barred()) {
                faults.in(
                        line,
                        0,
                        new Trouble(
                                said.start(3),
                                Phrase.counted(
                                        bars,
                                        "the tune has {0} bar there, and the chords over it have not",
                                        "the tune has {0} bars there, and the chords over it have not as many",
                                        bars),
                                Phrase.of("write as many bars, parted by {0}", Phrase.typed("|"))));
                return Optional.empty();
            }
            return Optional.of(plain.over(chords));
        } catch (Unreadable unreadable) {
            faults.in(line, said.start(3), Trouble.of(unreadable));
            return Optional.empty();
        }
    }
}
