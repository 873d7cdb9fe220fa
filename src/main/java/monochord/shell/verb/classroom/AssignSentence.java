package monochord.shell.verb.classroom;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentHead;
import monochord.classroom.AssignmentTerms;
import monochord.classroom.ChordPractice;
import monochord.course.Course;
import monochord.harmony.Progression;
import monochord.lesson.Keys;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.PlacedText;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.shell.sentence.AskedKeys;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.WholeNumber;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongPlace;
import monochord.song.SongReader;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** An assignment as a sentence asks for it: {@code triad-spelling in flats count 10 for 7b due 2026-12-10 each}. */
final class AssignSentence {
    static final String EXAMPLE = "assign triad-spelling in flats count 10 --out homework.md";
    static final String SONG = "song";
    static final String COUNT = "count";
    static final String CALLED = "called";
    static final String FOR = "for";
    static final String DUE = "due";
    static final String TRIES = "tries";
    static final String EACH = "each";
    static final String UNAIDED = "unaided";
    static final String LATER = "later";
    static final String SAYING = "saying";

    private static final int QUESTIONS = 10;
    private static final int MOST_QUESTIONS = 60;
    private static final int SEEDS = 1_000_000;
    private static final Pattern COMMA = Pattern.compile(",");

    private final Sentence sentence;
    private final Sitting sitting;
    private final long seed;

    /** What is asked: to draw from, or drawn. */
    private record AssignedMusic(String name, String title, List<Ask> draws, List<Question> questions) {}

    AssignSentence(Sentence sentence, Sitting sitting) {
        this.sentence = sentence;
        this.sitting = sitting;
        this.seed = sentence.option("seed")
                .map(part -> part.read(WholeNumber::seed))
                .orElseGet(() -> Math.floorMod(sitting.nextSeed(), (long) SEEDS));
    }

    /**
     * @throws Unreadable if the sentence names nothing that can be asked
     * @throws IOException if the file of a song cannot be read
     */
    Assignment assignment() throws IOException {
        String body = sentence.body().text();
        boolean isSong = body.toLowerCase(Locale.ROOT).startsWith(SONG + " ") || body.equalsIgnoreCase(SONG);
        AssignedMusic asked = isSong
                ? ofSong(body.substring(SONG.length()).strip())
                : sentence.body().read(this::asked);
        AssignmentTerms terms = new AssignmentTerms(
                number(TRIES, AssignmentTerms.ANY, AssignmentTerms.MOST_TRIES),
                sentence.clause(UNAIDED).isEmpty(),
                sentence.clause(LATER).isEmpty());
        String title = text(CALLED).orElse(asked.title());
        AssignmentHead head = new AssignmentHead(
                id(asked.name()),
                title,
                text(FOR).orElse(""),
                sentence.clause(DUE).map(part -> part.read(AssignSentence::day)),
                seed);
        String words = text(SAYING).orElse("");
        if (sentence.clause(EACH).isEmpty()) {
            return Assignment.same(head, terms, words, asked.questions());
        }
        if (asked.draws().isEmpty()) {
            throw refused(sentence.body().text(), 0, Clause.of("a song's chords are the same for all; leave each out"));
        }
        return Assignment.each(head, terms, words, asked.draws());
    }

    private AssignedMusic asked(String body) {
        Optional<Lesson> lesson = Skills.find(first(body)).isPresent() ? Optional.empty() : lesson(body);
        List<Ask> draws = lesson.map(this::asksOf).orElseGet(() -> ofSkills(body));
        String title = lesson.map(Lesson::title)
                .orElseGet(() -> String.join(
                        ", ",
                        draws.stream()
                                .map(ask -> ask.skill().title().toString())
                                .toList()));
        String name =
                lesson.map(Lesson::slug).orElseGet(() -> draws.get(0).skill().id());
        return new AssignedMusic(name, title, draws, Assignment.drawn(draws, seed));
    }

    private static String first(String body) {
        return body.split("[,\\s]", 2)[0];
    }

    private List<Ask> ofSkills(String body) {
        List<Skill> skills = new ArrayList<>();
        for (PlacedText name : new PlacedText(body, 0).split(COMMA)) {
            skills.add(Skills.find(name.text())
                    .orElseThrow(() -> refused(
                            body,
                            name.place(),
                            Clause.of("expected skills, as skills lists them, a lesson, or song and a place in it"))));
        }
        Keys keys = keys().orElse(named(sitting.key()));
        int count =
                number(COUNT, Math.max(QUESTIONS, skills.size()), Math.min(MOST_QUESTIONS, Ask.MOST * skills.size()));
        List<Ask> draws = new ArrayList<>();
        for (int i = 0; i < skills.size(); i++) {
            int share = (count + skills.size() - 1 - i) / skills.size();
            if (share > 0) {
                draws.add(ask(skills.get(i), null, keys, share));
            }
        }
        return draws;
    }

    private Optional<Lesson> lesson(String text) {
        return sitting.course()
                .library()
                .find(text)
                .flatMap(entry -> sitting.course().library().read(entry).lesson());
    }

    private List<Ask> asksOf(Lesson lesson) {
        List<Ask> asks = new ArrayList<>();
        lesson.parts().forEach(part -> {
            if (part instanceof Ask ask) {
                asks.add(ask(ask.skill(), ask.subject(), keys().orElse(placed(ask.keys())), ask.count()));
            }
        });
        if (asks.isEmpty()) {
            throw refused(sentence.body().text(), 0, Clause.of("this lesson asks nothing"));
        }
        return asks;
    }

    /** What a lesson calls the learner's own key is here that of the sitting. */
    private Keys placed(Keys keys) {
        return AskedKeys.parse(
                keys.toString().replaceAll("\\bsame\\b", named(sitting.key()).toString()));
    }

    private static Keys named(Key key) {
        Key major = Course.majorKey(key);
        return Keys.parse(
                key.isMinor() && key.isInUse()
                        ? key.tonic() + "m"
                        : major.tonic().toString());
    }

    private static Ask ask(Skill skill, String subject, Keys keys, int count) {
        return new Ask(0, skill, subject, keys, count, null);
    }

    private AssignedMusic ofSong(String named) throws IOException {
        String file = first(named);
        boolean isFile = file.endsWith(".md");
        Song song = isFile ? song(file) : open(named);
        String place = isFile ? named.substring(file.length()).strip() : named;
        Progression chords = chords(place, song);
        List<Question> questions = ChordPractice.questions(chords, number(COUNT, QUESTIONS, MOST_QUESTIONS), seed);
        if (questions.isEmpty()) {
            throw refused(sentence.body().text(), 0, Clause.of("nothing can be asked about these chords"));
        }
        String title = song.head().title() + (place.isEmpty() ? "" : ", " + place);
        return new AssignedMusic(title, SafeText.oneLine(title), List.of(), questions);
    }

    private Song open(String named) {
        return sitting.song()
                .song()
                .orElseThrow(() -> Unreadable.because(
                        sentence.body().text(),
                        SONG.length(),
                        "something to assign",
                        "no song is open, and no file is named",
                        "assign song my-song.md chorus"));
    }

    private Song song(String name) throws IOException {
        Path file = sentence.body().read(text -> sitting.outside().file(name));
        return SongReader.read(SongFile.text(file, name));
    }

    private Progression chords(String place, Song song) {
        Optional<Progression> chords = place.isEmpty()
                ? song.chords()
                : SongPlace.find(place, song).flatMap(found -> found.place().progression(song));
        return chords.orElseThrow(
                () -> refused(sentence.body().text(), 0, Clause.of("no place of this song with chords has that name")));
    }

    private Optional<Keys> keys() {
        return sentence.clause("in").map(part -> part.read(AskedKeys::parse));
    }

    private Optional<String> text(String word) {
        return sentence.clause(word).map(part -> SafeText.oneLine(part.text())).filter(text -> !text.isBlank());
    }

    private String id(String name) {
        String slug =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String cut = slug.substring(0, Math.min(slug.length(), 30)).replaceAll("-$", "");
        return (cut.isEmpty() ? "practice" : cut) + "-" + Math.abs(seed % SEEDS);
    }

    private int number(String word, int otherwise, int most) {
        return sentence.clause(word)
                .map(part -> part.read(text -> WholeNumber.count(text, most, EXAMPLE)))
                .orElse(otherwise);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException unreadable) {
            throw Unreadable.because(text, 0, "a day", "expected year, month and day", "due 2026-12-10");
        }
    }

    private static Unreadable refused(String text, int place, Clause why) {
        return Unreadable.because(text, place, "something to assign", why, EXAMPLE);
    }
}
