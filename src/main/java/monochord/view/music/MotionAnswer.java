package monochord.view.music;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.motion.Finding;
import monochord.harmony.motion.Move;
import monochord.harmony.motion.Pair;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.Perfect;
import monochord.harmony.motion.Step;
import monochord.harmony.motion.Strictness;
import monochord.harmony.motion.Telling;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/**
 * How the voices of some chords move, and what there is to mend.
 *
 * @param symbols the chords by name where we voiced them; none where the voices were given
 */
public record MotionAnswer(Passage passage, Strictness strictness, List<Chord> symbols) implements Answer {
    private static final int MOST_IN_GRID = 64;

    @Override
    public StyledText text(Look look) {
        Telling telling = new Telling(passage, strictness);
        List<Finding> findings = strictness.judge(passage);
        StyledText.Builder head = StyledText.builder().line(verdict(findings), Style.HEADING);
        if (!symbols.isEmpty()) {
            head.line("Voiced here: the bass in the left hand, the nearest shape in the right.", Style.QUIET);
        }
        if (!look.plain() && hasEvenVoices() && passage.chords().size() <= MOST_IN_GRID) {
            head.gap().lines(grid(telling, look)).gap();
        }
        return head.build().plus(said(findings, telling, look)).wrapped(look.width());
    }

    private StyledText said(List<Finding> findings, Telling telling, Look look) {
        StyledText.Builder text = StyledText.builder();
        findings.stream().filter(finding -> finding.at() == 0).forEach(finding -> found(finding, telling, text));
        List<Step> steps = passage.steps();
        for (int i = 0; i < steps.size(); i++) {
            change(i, steps.get(i), findings, telling, look, text);
        }
        return text.build().in(look.signs());
    }

    private String verdict(List<Finding> findings) {
        long faults = findings.stream().filter(Finding::isFault).count();
        long remarks = findings.size() - faults;
        String count = faults == 0 && remarks == 0
                ? "nothing to mend"
                : counted(faults, "fault") + (remarks == 0 ? "" : ", " + counted(remarks, "remark"));
        return "By " + strictness.title() + ": " + count + ".";
    }

    private static String counted(long count, String what) {
        return Words.number((int) count) + " " + what + (count == 1 ? "" : "s");
    }

    private boolean hasEvenVoices() {
        return passage.chords().stream().mapToInt(List::size).distinct().count() == 1;
    }

    private StyledText grid(Telling telling, Look look) {
        int voices = passage.chords().get(0).size();
        List<String> names = IntStream.range(0, voices)
                .mapToObj(v -> telling.name(v, voices))
                .toList();
        List<String> heads = IntStream.range(0, passage.chords().size())
                .mapToObj(i -> head(i, look.signs()))
                .toList();
        return new VoiceGrid(passage.chords(), heads, names, look.signs()).draw(look.pictureWidth());
    }

    private String head(int chord, Signs signs) {
        return symbols.isEmpty()
                ? Integer.toString(chord + 1)
                : symbols.get(chord).write(signs);
    }

    private void change(int i, Step step, List<Finding> findings, Telling telling, Look look, StyledText.Builder text) {
        text.line(StyledLine.of(head(i, Signs.MUSIC) + " to " + head(i + 1, Signs.MUSIC), Style.STRONG)
                .plus(": " + telling.sum(step)));
        if (look.plain()) {
            step.moves().forEach(move -> text.line(telling.voice(move, step)));
        }
        text.line((look.plain() ? "" : "  ") + telling.motions(step));
        List<Finding> here =
                findings.stream().filter(finding -> finding.at() == i + 1).toList();
        here.forEach(finding -> found(finding, telling, text));
        here.stream()
                .map(telling::instead)
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(remedy -> text.line("  Instead: " + remedy));
    }

    private static void found(Finding finding, Telling telling, StyledText.Builder text) {
        String mark = finding.isFault() ? "  Fault: " : "  Remark: ";
        text.line(StyledLine.of(mark, finding.isFault() ? Style.WRONG : Style.NEARLY)
                .plus(telling.of(finding)));
    }

    @Override
    public void json(Json json) {
        List<Finding> findings = strictness.judge(passage);
        Telling telling = new Telling(passage, strictness);
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
                        (object, finding) -> finding(object, finding, telling))
                .objects(
                        "remarks",
                        findings.stream().filter(finding -> !finding.isFault()).toList(),
                        (object, finding) -> finding(object, finding, telling));
    }

    private static void step(Json json, Step step) {
        json.objects("pairs", step.pairs(), MotionAnswer::pair)
                .put("common", step.kept())
                .put("shared", step.shared())
                .numbers("byVoice", step.moves().stream().map(Move::semitones).toList())
                .put("moved", step.moved());
    }

    private static void pair(Json json, Pair pair) {
        json.put("lower", pair.lower().voice())
                .put("upper", pair.upper().voice())
                .put("motion", pair.motion().toString());
        number(json, "parallel", pair.parallel());
        number(json, "contrary", pair.contrary());
        number(json, "repeated", pair.repeated());
    }

    private static void number(Json json, String name, Perfect perfect) {
        if (perfect == Perfect.NONE) {
            json.put(name, (String) null);
        } else {
            json.put(name, perfect.number());
        }
    }

    private static void finding(Json json, Finding finding, Telling telling) {
        json.put("kind", finding.kind().toString())
                .put("at", finding.at())
                .numbers("voices", finding.voices())
                .put("message", telling.of(finding))
                .put("instead", telling.instead(finding).orElse(null));
    }
}
