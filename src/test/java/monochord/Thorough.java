package monochord;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How much the tests try: {@code mvn verify} an even spread of what there is, {@code mvn -Pthorough verify} all of it. Both
 * are the same on every run.
 */
public final class Thorough {
    private static final String PROPERTY = "thorough";
    private static final boolean ON = Boolean.getBoolean(PROPERTY);

    private Thorough() {}

    /** A test that {@code mvn verify} leaves out. */
    @Target(ElementType.METHOD)
    @Retention(RetentionPolicy.RUNTIME)
    @EnabledIfSystemProperty(named = PROPERTY, matches = "true", disabledReason = "left to mvn -Pthorough verify")
    public @interface Only {}

    /**
     * How often something is tried.
     *
     * @param usually in {@code mvn verify}
     */
    public static int times(int usually, int thoroughly) {
        return ON ? thoroughly : usually;
    }

    /**
     * All of a list, or in {@code mvn verify} so many of it, evenly apart.
     *
     * @param start where the spread begins; as many starts as the list is long have met each element equally often
     */
    public static <T> List<T> spread(List<T> all, int usually, int start) {
        if (ON || usually >= all.size()) {
            return all;
        }
        return IntStream.range(0, usually)
                .mapToObj(i -> all.get(Math.floorMod(start + i * all.size() / usually, all.size())))
                .toList();
    }
}
