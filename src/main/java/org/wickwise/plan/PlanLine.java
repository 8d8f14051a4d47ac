package org.wickwise.plan;

import org.wickwise.reason.Reason;

/**
 * One line of a plan.
 *
 * @param label what `why` is asked with; short, and the same for the same case
 */
public record PlanLine(String label, Section section, String text, Reason reason) {

    /** What the line is called that says that no strip is wanted. */
    static final String NO_STRIP_WANTED = "next-none";

    /** Whether it says that no strip is wanted. */
    public boolean saysNoStripIsWanted() {
        return label.equals(NO_STRIP_WANTED);
    }

    /** The parts of a plan, in the order of printing. */
    public enum Section {
        VERDICT("In short"),
        PACKING("Pack and load"),
        STEPS("Pour in this order"),
        CHOICE("Why this way"),
        STRIPS("What the strips show"),
        FITNESS("What may not go in"),
        BASIS("What it rests on"),
        DOUBTS("What is doubtful"),
        NEXT("Which strip to run next"),
        EXPECT("Which strips to have run, and what to expect"),
        SAFETY("Safety"),
        CAME("What came, beside what was to be expected"),
        POOLS("What to put together"),
        BALANCE("Where the dyes are"),
        REASONS("Why it may have differed"),
        TEACHES("What the run teaches");

        private final String title;

        Section(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }
}
