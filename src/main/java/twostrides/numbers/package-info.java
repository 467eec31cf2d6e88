/**
 * What a season's counts can carry: what restarts cost, penalty kills, the empty net, slices,
 * players against their group and two sides compared, each as a grid of a page. Shares are whole
 * counts until the last step; a mean stands with its n. May import exits, stats, race and review.
 */
package twostrides.numbers;
