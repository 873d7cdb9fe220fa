package monochord.lesson.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.PlacedText;
import monochord.lesson.Reading;
import monochord.practice.Skill;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.text.SafeText;

/** Reads lessons, and finds every fault of a file in one pass. Nothing a file holds makes it throw. */
public final class LessonReader {
    private final Path file;
    private final Set<String> slugs;
    private final Tunes tunes;
    private final Faults faults;

    private LessonReader(Path file, Set<String> slugs, Tunes tunes) {
        this.file = file;
        this.slugs = slugs;
        this.tunes = tunes;
        this.faults = new Faults(file.toString());
    }

    /** @param slugs those that {@code needs} may name; null to let it name any */
    public static Reading read(Path file, Set<String> slugs) {
        return read(file, slugs, Tunes.beside(file));
    }

    /** @param tunes that its blocks may name */
    static Reading read(Path file, Set<String> slugs, Tunes tunes) {
        LessonReader reader = new LessonReader(file, slugs, tunes);
        return reader.read(new Source(reader.faults).lines(file));
    }

    /**
     * Reads a text as though it stood in a file.
     *
     * @param name the file's path, for the faults and the slug
     * @param slugs those that {@code needs} may name; null to let it name any
     */
    public static Reading read(Path name, String text, Set<String> slugs) {
        LessonReader reader = new LessonReader(name, slugs, Tunes.beside(name));
        return reader.read(new Source(reader.faults).lines(text));
    }

    private Reading read(Optional<List<SourceLine>> lines) {
        Optional<Lesson> lesson = lines.flatMap(this::lesson);
        return new Reading(lesson, faults.inOrder());
    }

    private Optional<Lesson> lesson(List<SourceLine> lines) {
        Head head = Head.read(lines, faults);
        HeadValues said = new HeadValues(head, faults);
        Optional<String> title = said.title();
        OptionalInt grade = said.grade();
        List<Skill> skills = said.skills();
        List<LessonPart> parts = Body.read(below(head, lines), tunes, faults);
        List<String> needs = needs(said);
        new SkillCheck(said, faults).compare(parts, lines);
        LessonName name = LessonName.of(file);
        return title.filter(some -> grade.isPresent())
                .map(some -> new Lesson(
                        SafeText.oneLine(name.slug()),
                        name.bookTitle(),
                        name.number(),
                        some,
                        grade.getAsInt(),
                        needs,
                        skills,
                        parts));
    }

    private static List<SourceLine> below(Head head, List<SourceLine> lines) {
        return Stream.concat(
                        lines.stream().limit(head.end()).map(line -> new SourceLine(line.number(), "")),
                        lines.stream().skip(head.end()))
                .toList();
    }

    private List<String> needs(HeadValues said) {
        List<String> needs = new ArrayList<>();
        String own = LessonName.of(file).slug();
        for (PlacedText need : said.needs()) {
            if (need.text().equals(own)) {
                said.fault("needs", need.place(), Phrase.of("the lesson needs itself"), Phrase.of("leave it out"));
            } else if (slugs != null && !slugs.contains(need.text())) {
                unknownNeed(said, need);
            } else {
                needs.add(need.text());
            }
        }
        return needs;
    }

    private void unknownNeed(HeadValues said, PlacedText need) {
        Phrase instead = Nearest.to(need.text(), slugs)
                .map(slug -> Phrase.of("write {0}", Phrase.typed(slug)))
                .orElse(Phrase.of("write the slug of a lesson in the library, or leave it out"));
        Phrase what = Phrase.of("no lesson is called \"{0}\"", Phrase.quoted(need.text()));
        said.fault("needs", need.place(), what, instead);
    }
}
