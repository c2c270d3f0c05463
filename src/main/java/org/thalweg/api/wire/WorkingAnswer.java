package org.thalweg.api.wire;

import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.thalweg.api.problem.Figure;

/**
 * How one figure came about.
 *
 * @param of      which figure
 * @param formula what it follows from
 * @param numbers the same with numbers
 * @param result  what comes out
 * @param source  where the formula or the rule stands
 */
@Schema(
        name = "Working",
        requiredProperties = {"of", "formula", "numbers", "result", "source"},
        description =
                "How one figure came about, to be checked by hand. Letters: θ a plane's slope, γ the corner in plan, α"
                        + " planAngleDeg, φ angleFromEaveDeg, θv slopeDeg, δ bendDeg, ω cornerDeg (half of it where another"
                        + " valley follows there, 90 where the pan has nothing to end on), ψ panRiseDeg, λ how far the rib"
                        + " leans; ₁ left, ₂ right, ψ′ the other side's. L the valley's length, R its run, w the panels'"
                        + " cover, C coilWidth, g ribLeg, r edgeReturn, T flat, c coverUnderPanel, d holdBack, d′"
                        + " holdBackAtTop, f fastenerInset, P pieceLength (of a cleat: cleatLength), ℓ lap, a the greatest"
                        + " spacing, ε a hair taken off before rounding up (a hundred-thousandth of the tolerance); i"
                        + " rainfall, A catchment, Q flow, y depth, n Manning's or a count, K conveyance. Of trims: β the bend,"
                        + " ρ its inside radius, t the thickness, K kFactor, k the factor of the formula, A allowance, D"
                        + " deduction, g the girths of legs and hems.")
public record WorkingAnswer(
        @Schema(
                description = "Which figure: a JSON Pointer from this valley or trim. `/pieces` is how many there are.",
                maxLength = 100,
                examples = "/sides/0/riseAcrossCover")
        String of,

        @Schema(description = "What it follows from, in letters.", maxLength = 200, examples = "w tan φ")
        String formula,

        @Schema(
                description =
                        "The same with the numbers put in, in the request's units and degrees, for a program or a pocket"
                                + " calculator: decimal numbers, `+ - * / ^ ( )`, a sign, and `sin cos tan asin acos atan"
                                + " sqrt ceil floor min max abs`, of which `min` and `max` take any number of arguments;"
                                + " angles in degrees; `^` first and from the right, then `*` and `/`, then `+` and `-`."
                                + " Numbers of the request stand as given, those computed before with up to 12 digits, so"
                                + " that it comes out at `result` to its last digit unless `source` says otherwise.",
                maxLength = 600,
                examples = "18 * tan(48.1896851042)")
        String numbers,

        @Schema(description = "What comes out, as the answer has it.")
        Figure result,

        @Schema(
                description =
                        "Where the formula or the rule stands: `geometry`, a code or handbook, `the request`, `common"
                                + " practice, no source`; and what the figure is held against, if it is.",
                maxLength = 300)
        String source) {}
