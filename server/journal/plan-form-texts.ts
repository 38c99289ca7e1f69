/** The remark that ends a plan in a journal, in words that `formOfRemark` knows. */
export const planFormTexts = {
  endsHere: "ends here; what you write below counts as played.",
};
