package monochord.lesson.read;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.lesson.LessonPart;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.PlacedText;
import monochord.text.Phrase;

/** Holds the skills that the head lists against those that the blocks ask. */
final class SkillCheck {
    private static final Pattern SKILL = Pattern.compile("\\s*skill\\s*:\\s*(\\S+)\\s*");

    private final HeadValues said;
    private final Faults faults;

    SkillCheck(HeadValues said, Faults faults) {
        this.said = said;
        this.faults = faults;
    }

    /** @param lines of the file, for a block with a fault of its own still shows what it was meant to ask */
    void compare(List<LessonPart> parts, List<SourceLine> lines) {
        List<Ask> asks = parts.stream()
                .filter(Ask.class::isInstance)
                .map(Ask.class::cast)
                .toList();
        Set<String> asked = lines.stream()
                .map(line -> SKILL.matcher(line.text()))
                .filter(Matcher::matches)
                .map(skill -> skill.group(1))
                .collect(Collectors.toSet());
        Set<String> listed = new TreeSet<>();
        for (PlacedText piece : said.skillPieces()) {
            listed(piece, asked, listed);
        }
        asks.stream().filter(ask -> listed.add(ask.skill().id())).forEach(this::notListed);
    }

    private void listed(PlacedText piece, Set<String> asked, Set<String> listed) {
        String id = piece.text();
        if (!listed.add(id)) {
            said.fault(
                    "skills",
                    piece.place(),
                    Phrase.of("{0} is listed twice", Phrase.typed(id)),
                    Phrase.of("leave one out"));
        } else if (!asked.contains(id) && AskText.skillIds().contains(id)) {
            said.fault(
                    "skills",
                    piece.place(),
                    Phrase.of("{0} is listed but never asked", Phrase.typed(id)),
                    Phrase.of("write an ask block, or leave it out"));
        }
    }

    private void notListed(Ask ask) {
        Phrase id = Phrase.typed(ask.skill().id());
        faults.at(
                ask.line(),
                1,
                Phrase.of("{0} is asked but not listed", id),
                Phrase.of("write {0} behind skills: in the head", id));
    }
}
