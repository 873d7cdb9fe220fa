package monochord.shell.verb.sounding;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;
import static monochord.shell.sentence.FormPart.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.AbComparison;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Lets two versions be heard one after the other, and says what differs. */
final class CompareVerb implements Verb {
    private static final String EXAMPLE = "compare F C G Ab vs F C Gsus4 Abmaj7 in C";
    private static final String WHAT = "a comparison";

    @Override
    public String word() {
        return "compare";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.SOUND,
                        Phrase.of(
                                "hear two versions, equally loud, and what differs; this means the last, plain and improved"))
                .form(
                        takes(Value.MUSIC),
                        clause("vs", Value.MUSIC),
                        unsaid(clause("versus", Value.MUSIC)),
                        may(clause(PlayVerb.OVER, Value.CHORDS)),
                        may(clause("in", Value.KEY)))
                .form(PlaybackOptions.form())
                .form(Recording.form())
                .form(orAgain(), words("this", "first", "second"))
                .examples(
                        EXAMPLE,
                        "compare IV I V I vs IV I bVI I in D as broken at 72",
                        "compare E4:2 D4 vs E4:2 Eb4 over C G in C",
                        "compare C vs Cm7");
    }

    @Override
    public boolean isNoName(String text, int place) {
        return PlaybackOptions.sayHow(text, place);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Optional<Sentence.SentencePart> other = sentence.clause("vs").or(() -> sentence.clause("versus"));
        if (other.isPresent()) {
            List<Playable> takes = bothTakes(sentence, other.get(), sitting);
            return heard(sentence, contest(sentence, takes, sitting.stage().directions()), sitting);
        }
        return switch (sentence.body().text().toLowerCase(Locale.ROOT)) {
            case "this" -> versions(sentence, sitting);
            case "" -> heard(sentence, again(sentence, sitting), sitting);
            case "first", "a" -> heard(sentence, again(sentence, sitting), 0, sitting);
            case "second", "b" -> heard(sentence, again(sentence, sitting), 1, sitting);
            default -> throw refused(sentence, "expected vs and what to compare with");
        };
    }

    private static Unreadable refused(Sentence sentence, String why) {
        return Unreadable.because(sentence.whole(), sentence.whole().length(), WHAT, why, EXAMPLE);
    }

    private static List<Playable> bothTakes(Sentence sentence, Sentence.SentencePart other, Sitting sitting) {
        if (sentence.clause("vs").isPresent() && sentence.clause("versus").isPresent()) {
            throw refused(sentence, "two versions are compared at a time");
        }
        return Stream.of(sentence.body(), other)
                .map(part -> PlayVerb.take(part, sentence, sitting))
                .toList();
    }

    private static AbComparison contest(Sentence sentence, List<Playable> takes, Directions usual) {
        Directions directions = PlaybackOptions.of(sentence, usual);
        takes.forEach(take -> PlaybackOptions.within(sentence.whole(), take.piece(), directions));
        return new AbComparison(takes, directions);
    }

    private static Answer versions(Sentence sentence, Sitting sitting) {
        PlaybackState stage = sitting.stage();
        if (stage.versions().isEmpty() && stage.contest().isPresent()) {
            return heard(sentence, again(sentence, sitting), sitting);
        } else if (stage.versions().isEmpty()) {
            throw refused(sentence, "there are no two versions of this; voice, recolour and fit leave them");
        }
        return heard(sentence, contest(sentence, stage.versions(), stage.directions()), sitting);
    }

    private static AbComparison again(Sentence sentence, Sitting sitting) {
        AbComparison last =
                sitting.stage().contest().orElseThrow(() -> refused(sentence, "nothing has been compared yet"));
        Directions directions = PlaybackOptions.of(sentence, sitting.stage().lastDirections());
        return directions.equals(last.directions()) ? last : contest(sentence, last.takes(), directions);
    }

    private static Answer heard(Sentence sentence, AbComparison contest, Sitting sitting) {
        return Recording.written(sentence, contest::performance, sitting).orElseGet(() -> contest.heard(sitting));
    }

    private static Answer heard(Sentence sentence, AbComparison contest, int side, Sitting sitting) {
        return Recording.written(sentence, () -> contest.performance(side), sitting)
                .orElseGet(() -> contest.heard(side, sitting));
    }
}
