package org.straddle.sky.prediction;

import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class PassPropertiesTest {

    @TestFactory
    Stream<DynamicTest> properties() {
        return PropertyRun.of(PassProperties.class);
    }
}
