/** Linear equations whose matrix is positive definite, the right side last in each row (Gauss). The rows are used up. */
export function solveEquations(rows: number[][]): number[] {
  for (const [i, pivot] of rows.entries())
    for (const [j, row] of rows.entries()) {
      const factor = j === i ? 0 : row[i]! / pivot[i]!;
      if (factor !== 0) for (let column = i; column < row.length; column += 1) row[column]! -= factor * pivot[column]!;
    }
  return rows.map((row, i) => row.at(-1)! / row[i]!);
}
