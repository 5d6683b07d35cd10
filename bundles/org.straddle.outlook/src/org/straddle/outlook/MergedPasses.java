package org.straddle.outlook;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Lists of passes, each in order, as one in order: a merge over a heap of their heads (Knuth, The Art of Computer
 * Programming 3, section 5.4.1). Of each list one pass is held at a time; the first of each, which may have to be searched,
 * are asked for on all processors.
 */
final class MergedPasses implements Iterator<SitePass> {

    private record Head(SitePass pass, Iterator<SitePass> rest) {
    }

    private final PriorityQueue<Head> heads;

    private MergedPasses(List<Iterator<SitePass>> lists, Comparator<SitePass> order) {
        heads = new PriorityQueue<>(Math.max(1, lists.size()), Comparator.comparing(Head::pass, order));
        heads.addAll(lists.parallelStream().filter(Iterator::hasNext).map(list -> new Head(list.next(), list)).toList());
    }

    static Stream<SitePass> of(List<Iterator<SitePass>> lists, Comparator<SitePass> order) {
        return StreamSupport.stream(Spliterators.spliteratorUnknownSize(new MergedPasses(lists, order),
                Spliterator.ORDERED | Spliterator.NONNULL), false);
    }

    private void push(Iterator<SitePass> passes) {
        if (passes.hasNext()) {
            heads.add(new Head(passes.next(), passes));
        }
    }

    @Override
    public boolean hasNext() {
        return !heads.isEmpty();
    }

    @Override
    public SitePass next() {
        Head head = heads.poll();
        if (head == null) {
            throw new NoSuchElementException();
        }
        push(head.rest);
        return head.pass;
    }
}
