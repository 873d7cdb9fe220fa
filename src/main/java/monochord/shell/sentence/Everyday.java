package monochord.shell.sentence;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What people type at a line without meaning music or a verb: that they are at a loss, that they would go on, that they
 * have had enough. Whole lines only, whatever their case and their punctuation.
 *
 * <p>Asked for only where a line can be read as nothing else, so that no answer and no music is mistaken for one of these.
 */
public enum Everyday {
    /** Would leave. */
    LEAVES("exit|(good ?)?bye( bye)?|close|log ?out|leave|q|i quit|end|thats (all|it)|im done"
            + "|i (want|have|need) to (stop|leave|quit|exit|go)"),
    /** Would have the next thing, whatever this one was. */
    NEXT("next( (one|question|page|lesson))?( please)?|go on|continue|carry on|move on|forward|pass|(press )?enter"),
    /** Agrees, or is ready. */
    AGREES("ok(ay)?|k|y|yes( please)?|yep|yeah|sure|(im )?ready|go( ahead)?|start|begin|lets (go|start|begin)|got it"
            + "|i see|all ?right|done"),
    /** Would hear what is on the screen. */
    HEARS("play (it|that|this|again|it again)|again|listen|hear it"),
    /** Does not know. */
    LOST(
            "help( me)?( please)?|please help( me)?|(im )?(stuck|lost)|i (do not|dont) (know|remember)( (it|that|this|how))?"
                    + "|idk|dunno|no (idea|clue)|(im )?not sure|i (cant|cannot)( do (it|this|that))?|i forgot"
                    + "|((give me|can i have) )?(a )?(hint|clue)( please)?"),
    /** Would have the answer. */
    GIVES_UP("(i )?give up|(show|tell) me( (it|the answer))?|(the )?(answer|solution)( please)?"
            + "|what ?(is|s) the (right )?answer"),
    /** Does not know what is wanted, or says something friendly. */
    PUZZLED("|what|wut|huh|h+m+|eh|oh|ah|how|pardon|sorry|n|no|nope|none|(what|and)? ?now( what)?|thanks|thank you"
            + "|what (do|should|can|must) i (do|type|say|write|answer)( (now|here|next))?"
            + "|what (is|does) (this|that|it)( mean)?|whats (this|that)|what do you (mean|want)"
            + "|i (do not|dont) (understand|get)( (this|that|it))?|menu|commands|options|instructions|home"
            + "|good|great|cool|nice|hi|hello|hey|hello there|good (day|morning|evening)|who are you"),
    /** Talks or asks in whole words. */
    TALKS("(what|whats|how|hows|who|where|when|which|can|could|please|is|are|should|does|this|that|my|im|youre?) .+"
            + "|i (want|need|have|had|would|think|thought|like|play|know|just|only|was|am|do|dont|cant|can|mean) .+");

    private static final int LONGEST = 200;
    private static final Pattern APOSTROPHES = Pattern.compile("['’]");
    private static final Pattern GAPS = Pattern.compile("[\\s,]+");
    private static final Pattern ENDS = Pattern.compile("[ .!?…]+$");
    /** Signs without a letter; question marks alone ask something. */
    private static final Pattern NOTHING_SAID = Pattern.compile("(?![\\s?]*$)[\\s\\p{Punct}…]*");

    private final Pattern lines;

    Everyday(String lines) {
        this.lines = Pattern.compile(lines);
    }

    /** What is meant by a line that is neither music nor an answer; none if it is nothing of this kind. */
    public static Optional<Everyday> in(String line) {
        if (line.length() > LONGEST || NOTHING_SAID.matcher(line).matches()) {
            return Optional.empty();
        }
        String said = GAPS.matcher(
                        APOSTROPHES.matcher(line.toLowerCase(Locale.ROOT)).replaceAll(""))
                .replaceAll(" ");
        String plain = ENDS.matcher(said).replaceAll("").strip();
        return Arrays.stream(values())
                .filter(meaning -> meaning.lines.matcher(plain).matches())
                .findFirst();
    }
}
