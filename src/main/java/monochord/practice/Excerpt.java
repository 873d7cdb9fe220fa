package monochord.practice;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * Something to be heard: moments one after another.
 *
 * @param lead what sets the key before it, perhaps nothing
 * @param body what is asked about
 */
public record Excerpt(List<Moment> lead, List<Moment> body) {
    private static final Beats BREATH = Beats.of(2);

    public Excerpt {
        lead = List.copyOf(lead);
        body = List.copyOf(body);
    }

    /** One that needs nothing before it. */
    public static Excerpt of(List<Moment> body) {
        return new Excerpt(List.of(), body);
    }

    /**
     * Keys struck together and held; no keys are a rest.
     *
     * @param pitches bottom to top
     * @param beats how long, more than none
     */
    public record Moment(List<Pitch> pitches, Beats beats) {
        public Moment {
            pitches = pitches.stream().sorted().toList();
        }

        static Moment rest(Beats beats) {
            return new Moment(List.of(), beats);
        }
    }

    /** The lead, a breath of a beat behind it, and the body. */
    public List<Moment> moments() {
        return lead.isEmpty()
                ? body
                : Stream.of(lead.stream(), Stream.of(Moment.rest(Beats.ONE)), body.stream())
                        .flatMap(part -> part)
                        .toList();
    }

    /** This, a breath, and what came of it otherwise; the lead stands once, before both. */
    public Excerpt then(Excerpt other) {
        return new Excerpt(
                lead,
                Stream.of(body.stream(), Stream.of(Moment.rest(BREATH)), other.body.stream())
                        .flatMap(part -> part)
                        .toList());
    }
}
