package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.junit.jupiter.api.Test;

class PlacedPieceTest {

    @Test
    void piecesOfARunThatBeginsWithAJointLieBehindIt() {
        // 100 mm to 731 mm: 10.333... + 290 + 10.333... + 310 + 10.333...
        Run run = new Run(Length.ofMillimetres(100), Length.ofMillimetres(731), RunEnd.JOINT, RunEnd.JOINT,
                Optional.of(new LengthRatio(Length.ofMillimetres(31), 3)), 3,
                List.of(new Piece(Length.ofMillimetres(290), Piece.Kind.CUT),
                        new Piece(Length.ofMillimetres(310), Piece.Kind.WHOLE)));
        List<PlacedPiece> placed = PlacedPiece.of(run);
        assertThat(placed).extracting(piece -> piece.from().units())
                .containsExactly(Math.round((100 + 31 / 3.0) * 320), Math.round((390 + 62 / 3.0) * 320));
        assertThat(placed.get(1).to().units()).isEqualTo(Math.round((700 + 62 / 3.0) * 320));
    }
}
