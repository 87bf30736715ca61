//! Drawings given out as pictures.

use super::file::give_blob;
use super::words;
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, HtmlImageElement};

/// Dots of the picture for each pixel of the drawing, so that it is sharp on paper.
const SHARPER: f64 = 3.0;

/// Hands a drawing, an svg document of that size in pixels, to the user as a PNG file called `name`.
///
/// # Errors
/// The browser's words. What goes wrong later, while the drawing is read, gives no file.
pub fn give_out_png(name: &str, drawing: &str, width: f64, height: f64) -> Result<(), String> {
    give(name.to_owned(), drawing, width, height).map_err(|error| words(&error))
}

fn give(name: String, drawing: &str, width: f64, height: f64) -> Result<(), JsValue> {
    let document = web_sys::window().and_then(|window| window.document()).ok_or(JsValue::NULL)?;
    let canvas: HtmlCanvasElement = document.create_element("canvas")?.unchecked_into();
    // A picture's size is a whole number of dots; a drawing has a few hundred pixels.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let dots = |pixels: f64| (pixels * SHARPER).clamp(1.0, 8192.0) as u32;
    canvas.set_width(dots(width));
    canvas.set_height(dots(height));
    let image = HtmlImageElement::new()?;
    let source = image.clone();
    let drawn = Closure::once_into_js(move || -> Result<(), JsValue> {
        let context: CanvasRenderingContext2d = canvas.get_context("2d")?.ok_or(JsValue::NULL)?.unchecked_into();
        context.draw_image_with_html_image_element_and_dw_and_dh(
            &source,
            0.0,
            0.0,
            width * SHARPER,
            height * SHARPER,
        )?;
        let save = Closure::once_into_js(move |blob: Option<Blob>| -> Result<(), JsValue> {
            blob.map_or(Ok(()), |blob| give_blob(&name, &blob))
        });
        canvas.to_blob(save.unchecked_ref())
    });
    image.set_onload(Some(drawn.unchecked_ref()));
    image.set_src(&format!("data:image/svg+xml;charset=utf-8,{}", js_sys::encode_uri_component(drawing)));
    Ok(())
}
