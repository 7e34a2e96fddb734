package org.coursewright.help.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageAddressTest {

    @Test
    void linksAreFollowedFromTheirPage() {
        assertThat(PageAddress.HOME.follow("wall-face.md")).contains(new PageAddress("guide/wall-face.md"));
        assertThat(PageAddress.HOME.follow("../glossary.md#units")).contains(new PageAddress("glossary.md"));
    }

    @Test
    void whatLeadsOutsideOrNowhereIsNotFollowed() {
        assertThat(PageAddress.HOME.follow("https://example.org/a.md")).isEmpty();
        assertThat(PageAddress.HOME.follow("../../pom.xml")).isEmpty();
        assertThat(PageAddress.HOME.follow("#keys")).isEmpty();
    }
}
