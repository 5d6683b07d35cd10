package org.straddle.kit.work;

import java.util.Arrays;
import java.util.List;

/** A monotone formula over pieces, by their index: one more piece that works never makes it false. */
sealed interface Formula {

    boolean holds(boolean[] works);

    /** At least so many of these pieces work. */
    record AtLeast(int count, int[] pieces) implements Formula {

        @Override
        public boolean holds(boolean[] works) {
            int left = count;
            for (int i = 0; left > 0 && i < pieces.length; i++) {
                if (works[pieces[i]]) {
                    left--;
                }
            }
            return left <= 0;
        }

        @Override
        public String toString() {
            return count + "/" + Arrays.toString(pieces);
        }
    }

    record All(List<Formula> parts) implements Formula {

        @Override
        public boolean holds(boolean[] works) {
            for (Formula part : parts) {
                if (!part.holds(works)) {
                    return false;
                }
            }
            return true;
        }
    }

    record Any(List<Formula> parts) implements Formula {

        @Override
        public boolean holds(boolean[] works) {
            for (Formula part : parts) {
                if (part.holds(works)) {
                    return true;
                }
            }
            return false;
        }
    }

    static Formula all(Formula... parts) {
        return new All(List.of(parts));
    }

    static Formula any(Formula... parts) {
        return new Any(List.of(parts));
    }
}
