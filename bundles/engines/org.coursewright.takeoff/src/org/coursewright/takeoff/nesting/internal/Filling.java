package org.coursewright.takeoff.nesting.internal;

/** Plans without looking back: the largest pieces first, whatever fits beside them. */
final class Filling {

    private final Sizes sizes;

    Filling(Sizes sizes) {
        this.sizes = sizes;
    }

    /** @return a cutting that meets the demand exactly */
    Cutting fill(long[] demand) {
        Cutting cutting = new Cutting();
        long[] left = demand.clone();
        for (int item = 0; item < left.length; item++) {
            while (left[item] > 0) {
                int[] pattern = largestFirst(left);
                cutting.add(pattern, take(pattern, left));
            }
        }
        return cutting;
    }

    /**
     * Uses whole multiples of the relaxation's patterns.
     *
     * @param left the demand, of which is taken what the cutting meets
     */
    Cutting roundedDown(Relaxation relaxation, long[] left) {
        Cutting cutting = new Cutting();
        for (int index = 0; index < relaxation.patterns().size(); index++) {
            int[] pattern = relaxation.patterns().get(index);
            long uses = Math.min((long) (relaxation.uses(index) + 1e-6), most(pattern, left));
            subtract(pattern, uses, left);
            cutting.add(pattern, uses);
        }
        return cutting;
    }

    private int[] largestFirst(long[] left) {
        int[] pattern = new int[left.length];
        long room = sizes.capacity();
        for (int item = 0; item < left.length; item++) {
            pattern[item] = (int) Math.min(left[item], room / sizes.size(item));
            room -= pattern[item] * sizes.size(item);
        }
        return pattern;
    }

    private static long take(int[] pattern, long[] left) {
        long uses = most(pattern, left);
        subtract(pattern, uses, left);
        return uses;
    }

    private static long most(int[] pattern, long[] left) {
        long most = Long.MAX_VALUE;
        for (int item = 0; item < left.length; item++) {
            if (pattern[item] > 0) {
                most = Math.min(most, left[item] / pattern[item]);
            }
        }
        return most == Long.MAX_VALUE ? 0 : most;
    }

    private static void subtract(int[] pattern, long uses, long[] left) {
        for (int item = 0; item < left.length; item++) {
            left[item] -= uses * pattern[item];
        }
    }
}
