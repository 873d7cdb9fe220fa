package monochord.shell;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Keys;
import monochord.shell.verb.Verb;
import monochord.shell.verb.Verbs;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;

/** Offers verbs at the start of a line, keys behind {@code in from to}, and what each verb takes. */
final class Completion implements Completer {
    private static final List<String> BEFORE_A_KEY = List.of("in", "from", "to", "key");

    private final Verbs verbs;
    private final Sitting sitting;

    Completion(Verbs verbs, Sitting sitting) {
        this.verbs = verbs;
        this.sitting = sitting;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        offers(line).map(Candidate::new).forEach(candidates::add);
    }

    private Stream<String> offers(ParsedLine line) {
        int index = line.wordIndex();
        if (index == 0) {
            return verbs.words().stream();
        }
        if (BEFORE_A_KEY.contains(line.words().get(index - 1))) {
            return Keys.shortNames().stream();
        }
        Optional<Verb> verb = verbs.find(line.words().get(0));
        return verb.stream()
                .flatMap(found -> Stream.concat(words(found.candidates(sitting)), found.usage().smallWords().stream()));
    }

    /** Candidates are offered word by word, for the line is completed one word at a time. */
    private static Stream<String> words(Collection<String> candidates) {
        return candidates.stream()
                .flatMap(candidate -> Stream.of(candidate.split(" ")))
                .distinct();
    }
}
