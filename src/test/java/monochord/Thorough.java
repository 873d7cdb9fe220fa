package monochord;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * How much the tests try: {@code mvn verify} an even spread of what there is, {@code mvn -Pthorough verify} all of it. Both
 * are the same on every run.
 */
public final class Thorough {
    private static final String PROPERTY = "thorough";
    private static final String LEFT_OUT = "left to mvn -Pthorough verify";
    private static final boolean ON = Boolean.getBoolean(PROPERTY);

    private Thorough() {}

    /** A test that {@code mvn verify} leaves out. */
    @Target(ElementType.METHOD)
    @Retention(RetentionPolicy.RUNTIME)
    @EnabledIfSystemProperty(named = PROPERTY, matches = "true", disabledReason = LEFT_OUT)
    public @interface Only {}

    /** A test with rows, of which {@code mvn verify} takes the first of each {@code value}. */
    @Target(ElementType.METHOD)
    @Retention(RetentionPolicy.RUNTIME)
    @ExtendWith(FirstOfEach.class)
    public @interface FirstOf {
        int value();
    }

    /** Tells the rows apart by their numbers in JUnit's unique ids. */
    static final class FirstOfEach implements ExecutionCondition {
        private static final Pattern ROW = Pattern.compile("\\[test-template-invocation:#(\\d+)]$");

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            Matcher row = ROW.matcher(context.getUniqueId());
            boolean taken = ON
                    || !row.find()
                    || (Integer.parseInt(row.group(1)) - 1)
                                    % context.getRequiredTestMethod()
                                            .getAnnotation(FirstOf.class)
                                            .value()
                            == 0;
            return taken ? ConditionEvaluationResult.enabled("tried") : ConditionEvaluationResult.disabled(LEFT_OUT);
        }
    }

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
