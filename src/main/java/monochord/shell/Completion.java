package monochord.shell;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import monochord.cell.Cell;
import monochord.harmony.Instrument;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.score.HeardPart;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.shell.verb.sounding.PlaybackOptions;
import monochord.sound.Patch;
import monochord.text.naming.ToType;
import monochord.theory.ScaleKind;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;

/**
 * Offers verbs at the start of a line, keys behind {@code in from to}, patches behind {@code with}, instruments behind
 * {@code for}, and what each verb takes; word by word, each time what can follow the words before. Behind two hyphens stand
 * the verb's options. Where a line is or may become Java, what the cell would take stands beside that; behind {@code $} stand
 * the cell's variables.
 */
final class Completion implements Completer {
    private final Verbs verbs;
    private final Sitting sitting;

    Completion(Verbs verbs, Sitting sitting) {
        this.verbs = verbs;
        this.sitting = sitting;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        List<String> before = line.words().subList(0, line.wordIndex()).stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
        boolean sentence = !before.isEmpty() && verbs.find(before.get(0)).isPresent();
        if (!sitting.cells().isOpen()) {
            offers(before).distinct().map(Candidate::new).forEach(candidates::add);
        }
        if (sentence && line.word().startsWith("--")) {
            verbs.find(before.get(0)).orElseThrow().usage().options().stream()
                    .map(option -> new Candidate("--" + option))
                    .forEach(candidates::add);
        } else if (sentence && line.word().startsWith("$")) {
            sitting.cells().variables().map(name -> new Candidate("$" + name)).forEach(candidates::add);
        } else if (!sentence && (before.isEmpty() || isJava(line.line()))) {
            java(line).forEach(candidates::add);
        }
    }

    private boolean isJava(String line) {
        return sitting.cells().isOpen() || JavaText.mayBe(line, sitting.cells()::holds);
    }

    /** What the cell would take here; without a letter or a point before it that would be nearly everything. */
    private Stream<Candidate> java(ParsedLine line) {
        String said = line.word().substring(0, line.wordCursor());
        if (said.isEmpty() || !Character.isJavaIdentifierPart(said.charAt(said.length() - 1)) && !said.endsWith(".")) {
            return Stream.empty();
        }
        int start = line.cursor() - said.length();
        Cell.Completions found = sitting.cells().complete(line.line(), line.cursor());
        int kept = found.from() - start;
        return kept < 0 || kept > said.length()
                ? Stream.empty()
                : found.texts().stream().distinct().map(text -> candidate(said.substring(0, kept), text));
    }

    /** Shown without what stands before it in the same word; no space goes behind it. */
    private static Candidate candidate(String before, String text) {
        return new Candidate(before + text, text, null, null, null, null, false);
    }

    private Stream<String> offers(List<String> before) {
        if (before.isEmpty()) {
            return verbs.words().stream();
        }
        Optional<Verb> verb = verbs.find(before.get(0));
        return verb.isEmpty() ? Stream.empty() : offers(verb.get(), before);
    }

    private Stream<String> offers(Verb verb, List<String> before) {
        Usage usage = verb.usage();
        Set<String> smallWords = usage.smallWords();
        int clause = before.size() - 1;
        while (clause > 0 && !smallWords.contains(before.get(clause))) {
            clause--;
        }
        List<String> said = before.subList(clause + 1, before.size());
        Stream<String> phrases = clause == 0
                ? longestFit(body(usage), said)
                : next(inClause(usage.clauses().get(before.get(clause))), said);
        boolean clauseIsEmpty = clause > 0 && said.isEmpty();
        return clauseIsEmpty ? phrases : Stream.concat(phrases, smallWords.stream());
    }

    /** What can stand behind the verb itself. */
    private Collection<String> body(Usage usage) {
        return Stream.concat(usage.values().stream().flatMap(value -> written(value).stream()), usage.words().stream())
                .toList();
    }

    private Collection<String> written(Value value) {
        return switch (value) {
            case KEY -> SentenceKey.names();
            case SCALE -> ScaleKind.all().stream().map(ScaleKind::toString).toList();
            case MODE ->
                ScaleKind.all().stream()
                        .filter(kind -> kind.degrees().size() == 7)
                        .map(ScaleKind::toString)
                        .toList();
            case SKILL -> Skills.all().stream().map(Skill::id).toList();
            case LESSON -> lessons(LibraryEntry::number);
            case LESSON_FILES -> lessons(entry -> entry.file().toString());
            case PART -> Stream.of(HeardPart.values()).map(part -> part + " of").toList();
            case VERB -> verbs.words();
            default -> inClause(value);
        };
    }

    private List<String> lessons(Function<LibraryEntry, String> said) {
        return sitting.course().library().entries().stream().map(said).toList();
    }

    private Collection<String> inClause(Value value) {
        return switch (value) {
            case KEY, KEYS ->
                SentenceKey.shortNames().stream().map(this::asCalled).toList();
            case PATTERN -> PlaybackOptions.patterns();
            case METRE -> List.of("2/4", "3/4", "4/4", "6/8");
            case PATCH -> Patch.all().stream().map(Patch::toString).toList();
            case INSTRUMENT -> Instrument.allNames();
            default -> List.of();
        };
    }

    private String asCalled(String key) {
        return ToType.in(key, sitting.naming());
    }

    /** What follows the last words said, as many of them as begin a phrase: a tonic may stand before a scale's name. */
    private static Stream<String> longestFit(Collection<String> phrases, List<String> said) {
        for (int from = 0; from < said.size(); from++) {
            List<String> fit = next(phrases, said.subList(from, said.size())).toList();
            if (!fit.isEmpty()) {
                return fit.stream();
            }
        }
        return next(phrases, List.of());
    }

    /** The next word of each phrase that begins with these words. */
    private static Stream<String> next(Collection<String> phrases, List<String> said) {
        return phrases.stream()
                .map(phrase -> List.of(phrase.split(" ")))
                .filter(words -> words.size() > said.size())
                .filter(words ->
                        String.join(" ", words.subList(0, said.size())).equalsIgnoreCase(String.join(" ", said)))
                .map(words -> words.get(said.size()));
    }
}
