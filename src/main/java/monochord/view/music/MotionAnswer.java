package monochord.view.music;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.motion.Finding;
import monochord.harmony.motion.MotionExplanation;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.PerfectInterval;
import monochord.harmony.motion.Strictness;
import monochord.harmony.motion.VoiceMove;
import monochord.harmony.motion.VoicePair;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * How the voices of some chords move, and what there is to mend.
 *
 * @param symbols the chords by name where we voiced them; none where the voices were given
 */
public record MotionAnswer(Passage passage, Strictness strictness, List<Chord> symbols) implements Answer {
    private static final int MOST_IN_GRID = 64;
    private static final String INDENT = "  ";

    @Override
    public StyledText text(Look look) {
        MotionExplanation explanation = new MotionExplanation(passage, strictness);
        List<Finding> findings = strictness.judge(passage);
        StyledText.Builder text = StyledText.builder(look.reader()).line(verdict(findings), Style.HEADING);
        if (!symbols.isEmpty()) {
            text.line(
                    Phrase.sentence("Voiced here: the bass in the left hand, the nearest shape in the right."),
                    Style.QUIET);
        }
        if (!look.plain() && hasEvenVoices() && passage.chords().size() <= MOST_IN_GRID) {
            text.gap().lines(grid(explanation, look)).gap();
        }
        findings.stream().filter(finding -> finding.at() == 0).forEach(finding -> found(finding, explanation, text));
        for (int i = 0; i < passage.steps().size(); i++) {
            change(i, findings, explanation, look, text);
        }
        return text.build().wrapped(look.width());
    }

    private Phrase verdict(List<Finding> findings) {
        int faults = (int) findings.stream().filter(Finding::isFault).count();
        int remarks = findings.size() - faults;
        Phrase counted = Phrase.counted(faults, "{0} fault", "{0} faults", Phrase.number(faults));
        if (findings.isEmpty()) {
            return Phrase.sentence("By {0}: nothing to mend.", strictness.title());
        } else if (remarks == 0) {
            return Phrase.sentence("By {0}: {1}.", strictness.title(), counted);
        }
        return Phrase.sentence(
                "By {0}: {1}, {2}.",
                strictness.title(),
                counted,
                Phrase.counted(remarks, "{0} remark", "{0} remarks", Phrase.number(remarks)));
    }

    private boolean hasEvenVoices() {
        return passage.chords().stream().mapToInt(List::size).distinct().count() == 1;
    }

    private StyledText grid(MotionExplanation explanation, Look look) {
        int voices = passage.chords().get(0).size();
        List<Phrase> names = IntStream.range(0, voices)
                .mapToObj(v -> explanation.name(v, voices))
                .toList();
        List<Phrase> heads =
                IntStream.range(0, passage.chords().size()).mapToObj(this::head).toList();
        return new VoiceGrid(passage.chords(), heads, names, look.reader()).draw(look.pictureWidth());
    }

    private Phrase head(int chord) {
        return symbols.isEmpty() ? Phrase.of("{0}", chord + 1) : Phrase.of("{0}", symbols.get(chord));
    }

    private void change(
            int i, List<Finding> findings, MotionExplanation explanation, Look look, StyledText.Builder text) {
        MotionStep step = passage.steps().get(i);
        text.line(Phrase.of(
                "{0}: {1}", Phrase.of("{0} to {1}", head(i), head(i + 1)).styled(Style.STRONG), explanation.sum(step)));
        if (look.plain()) {
            step.moves().forEach(move -> text.line(explanation.voice(move, step)));
        }
        text.add(look.plain() ? "" : INDENT).add(explanation.motions(step)).end();
        List<Finding> here =
                findings.stream().filter(finding -> finding.at() == i + 1).toList();
        here.forEach(finding -> found(finding, explanation, text));
        here.stream()
                .map(explanation::instead)
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(remedy ->
                        text.add(INDENT).add(Phrase.of("Instead: {0}", remedy)).end());
    }

    private static void found(Finding finding, MotionExplanation explanation, StyledText.Builder text) {
        Phrase mark = finding.isFault()
                ? Phrase.of("Fault:").styled(Style.WRONG)
                : Phrase.of("Remark:").styled(Style.NEARLY);
        text.add(INDENT).add(mark.then(explanation.of(finding))).end();
    }

    @Override
    public void json(Json json) {
        json.put("kind", "motion");
        List<Finding> findings = strictness.judge(passage);
        MotionExplanation explanation = new MotionExplanation(passage, strictness);
        json.put("strictness", strictness.toString())
                .put("chords", symbols)
                .put(
                        "voices",
                        passage.chords().stream()
                                .map(chord -> Passage.write(chord, Signs.ASCII))
                                .toList())
                .objects("steps", passage.steps(), MotionAnswer::step)
                .objects(
                        "faults",
                        findings.stream().filter(Finding::isFault).toList(),
                        (object, finding) -> finding(object, finding, explanation))
                .objects(
                        "remarks",
                        findings.stream().filter(finding -> !finding.isFault()).toList(),
                        (object, finding) -> finding(object, finding, explanation));
    }

    private static void step(Json json, MotionStep step) {
        json.objects("pairs", step.pairs(), MotionAnswer::pair)
                .put("common", step.kept())
                .put("shared", step.shared())
                .numbers(
                        "byVoice",
                        step.moves().stream().map(VoiceMove::semitones).toList())
                .put("moved", step.moved());
    }

    private static void pair(Json json, VoicePair pair) {
        json.put("lower", pair.lower().voice())
                .put("upper", pair.upper().voice())
                .put("motion", pair.motion().toString());
        number(json, "parallel", pair.parallel());
        number(json, "contrary", pair.contrary());
        number(json, "repeated", pair.repeated());
    }

    private static void number(Json json, String name, PerfectInterval perfect) {
        if (perfect == PerfectInterval.NONE) {
            json.put(name, (String) null);
        } else {
            json.put(name, perfect.number());
        }
    }

    private static void finding(Json json, Finding finding, MotionExplanation explanation) {
        json.put("kind", finding.kind().toString())
                .put("at", finding.at())
                .numbers("voices", finding.voices())
                .put("message", explanation.of(finding).toString())
                .put(
                        "instead",
                        explanation.instead(finding).map(Phrase::toString).orElse(null));
    }
}
